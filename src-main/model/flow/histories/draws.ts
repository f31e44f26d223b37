/** What chance decides in one history of a tour. */
export interface Draws {
  /** By step: power of all panels at their plugs, W. */
  readonly panelW: Float32Array;
  /** By draw of outlet luck: 1 where the outlet is there and free. */
  readonly outletIsFree: Uint8Array;
  /** By day and device: what multiplies the planned use; its mean is 1. */
  readonly useScale: Float32Array;
}
