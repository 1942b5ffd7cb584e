import { say } from "../../sentence.js";

/** Why a log of waveforms needs no statement of which end of an interval its stamps mark. */
export const SAMPLE_TIMES = say`the log holds waveforms, whose samples carry the time at which they were taken`;
