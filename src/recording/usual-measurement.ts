/**
 * How waveforms are measured where the setup says nothing else; the one place of these numbers. Thresholds in % of the
 * reference (transients: of the crest of the declared voltage); sources stand at the phenomena that use them.
 */
export const USUAL_MEASUREMENT = {
  dip: 90,
  swell: 110,
  interruption: 5,
  hysteresis: 2,
  reference: "declared",
  rapidVoltageChange: 3,
  transient: 20,
  lamp: 230,
  harmonics: "subgroups",
} as const;
