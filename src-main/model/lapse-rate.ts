/** Fall of air temperature with height, K/m: 6.5 K/km below 11 km (ISO 2533:1975). */
export const lapseKPerM = 0.0065;
