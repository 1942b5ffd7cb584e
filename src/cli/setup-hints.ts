/** Parts of a setup that tell more than a verdict needs; `inspect --write-setup` offers those that were not given, as comments. */
export const SETUP_HINTS: Readonly<Record<string, string>> = {
  network: `network: { level: LV, interconnected: true, earthing: TN-C-S }`,
  instrument: `instrument:
  type: type designation
  class: A # of IEC 61000-4-30: A, S or other
  serialNumber: "0001"
  calibrationDate: 2026-01-15
  calibrationDue: 2028-01-15
  certificate: number of the calibration certificate
  synchronisation: how its clock was set, and by how much it was off at the start and at the end
  sensors:
    - { what: voltage transformer, measures: voltage, ratio: 20000/100, class: 0.5 }
  uncertainty: # as stated in a certificate; without it, that of the class counts
    - { quantity: voltage, expanded: 0.1, of: declared, k: 2, source: calibration certificate } # of: reading, declared or absolute`,
  report: `report: # what ISO/IEC 17025:2017, 7.8.2, asks a report to say
  number: "2026-001"
  customer: name of the customer
  laboratory: { name: name of the laboratory, address: its address }
  performedBy: who measured
  authorisedBy: who authorises the report
  issued: 2026-03-20
  samplingPlan: why this point and this week
  deviations: additions to, deviations from and exclusions from the method`,
  exclusions: `exclusions: # spans in which the standard does not apply; reasons: temporary-supply, non-compliant-installation, exceptional-weather,
  # third-party-interference, acts-of-authorities, industrial-action, force-majeure, power-shortage
  - from: 2026-03-04T14:00 # local time of the log; or with an offset: 2026-03-04T14:00+01:00
    to: 2026-03-04T16:30
    reason: temporary-supply
    assertedBy: who says so
    reference: the evidence for it`,
  complaints: `complaints: # when something was noticed, in local time of the log or with an offset; a moment or a span
  - { at: 2026-03-04T12:30, what: inverter switched itself off }
  - { at: 2026-03-05T18:00, to: 2026-03-05T19:30, what: lamps flicker }`,
  comments: `comments: # shown at their time in the charts
  - { at: 2026-03-04T14:00, phase: L2, text: heat pump connected }`,
  voltageSteps: `voltageSteps: [-5, -2.5, 2.5, 5] # tap steps in % of the declared voltage, for what they would change`,
  photovoltaic: `photovoltaic: { ratedPower: 8400, temperatureCoefficient: -0.38, noct: 45 } # W, %/K, °C`,
  decisionRule: `decisionRule: simple # guarded: limits moved by the uncertainty`,
};
