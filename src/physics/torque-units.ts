/** Units a torque may be written in, in N·m. NIST SP 811 (2008) appendix B; exact from pound-force and foot. */
export const TORQUE_UNITS = {
  lbf·ft: 1.3558179483314,
  lbf·in: 0.1129848290276,
  kgf·m: 9.80665,
  kgf·cm: 0.0980665,
} as const;

/** Name of a torque unit other than N·m. */
export type TorqueUnit = keyof typeof TORQUE_UNITS;
