import type { FrontLoad } from '../../shared-types/front-load.ts';

/** How loads fall on the front wheel, in the row of settings. */
export interface LoadColumns {
  readonly wheelbase_m: number;
  readonly ahead_fork_m: number;
  readonly ahead_handlebar_m: number;
  readonly ahead_frame_m: number;
  readonly ahead_rear_rack_m: number;
  readonly ahead_body_m: number;
  readonly own_share_fork: number | null;
  readonly own_share_handlebar: number | null;
  readonly own_share_frame: number | null;
  readonly own_share_rear_rack: number | null;
  readonly own_share_body: number | null;
}

export function loadColumns({ wheelbaseM, ahead, ownShare }: FrontLoad): LoadColumns {
  return {
    wheelbase_m: wheelbaseM,
    ahead_fork_m: ahead.fork,
    ahead_handlebar_m: ahead.handlebar,
    ahead_frame_m: ahead.frame,
    ahead_rear_rack_m: ahead.rearRack,
    ahead_body_m: ahead.body,
    own_share_fork: ownShare.fork,
    own_share_handlebar: ownShare.handlebar,
    own_share_frame: ownShare.frame,
    own_share_rear_rack: ownShare.rearRack,
    own_share_body: ownShare.body,
  };
}

export function frontLoadOf(row: LoadColumns): FrontLoad {
  return {
    wheelbaseM: row.wheelbase_m,
    ahead: {
      fork: row.ahead_fork_m,
      handlebar: row.ahead_handlebar_m,
      frame: row.ahead_frame_m,
      rearRack: row.ahead_rear_rack_m,
      body: row.ahead_body_m,
    },
    ownShare: {
      fork: row.own_share_fork,
      handlebar: row.own_share_handlebar,
      frame: row.own_share_frame,
      rearRack: row.own_share_rear_rack,
      body: row.own_share_body,
    },
  };
}
