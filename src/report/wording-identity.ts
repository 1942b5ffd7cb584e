import { say } from "../sentence.js";

/** Words on the report itself: what ISO/IEC 17025:2017, 7.8.2, asks it to state. */

export const IDENTITY_HEADING = say`About this report`;

export const IDENTITY = {
  number: say`Report number`,
  laboratory: say`Laboratory`,
  customer: say`Customer`,
  requestedBy: say`Requested by`,
  performedBy: say`Measured by`,
  issued: say`Date of issue`,
  samplingPlan: say`Sampling plan`,
  deviations: say`Additions to and deviations from the method`,
  authorisedBy: say`Authorised by`,
} as const;
