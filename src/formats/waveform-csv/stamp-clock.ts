import { LogError, UsageError } from "../../errors.js";
import { MINUTE } from "../../recording/time.js";
import { TimeZone } from "../../recording/time-zone.js";
import { type DateOrder, dayOf } from "../csv/date-order.js";
import { NO_OFFSET, StampReader } from "../csv/stamp-reader.js";

/** Turns the stamps of one file into instants, row by row. */
export class StampClock {
  /** The first stamp lies in an hour that the clock shows twice. */
  doubtful = false;
  #date = -1;
  #day = 0;
  #last = Number.NEGATIVE_INFINITY;

  constructor(
    private readonly file: string,
    private readonly form: number,
    private readonly order: DateOrder,
    private readonly zone: TimeZone,
  ) {}

  /**
   * @param date packed, `timeOfDay`, `offset` as in StampReader
   * @throws LogError for a date that does not exist, or a time that the clock skipped
   */
  instant(date: number, timeOfDay: number, offset: number, line: number): number {
    if (date !== this.#date) {
      this.#date = date;
      this.#day = dayOf(date, this.form, this.order) * 1000;
      if (Number.isNaN(this.#day)) throw new LogError(this.file, `line ${line}`, "there is no such date");
    }
    const local = this.#day + timeOfDay;
    if (offset !== NO_OFFSET) return local - offset * MINUTE;
    const earlier = this.zone.earlierInstant(local);
    let instant = earlier;
    if (this.zone.changes.length > 0) {
      if (Number.isNaN(earlier)) {
        const hint = "the log's clock seems not to follow summer time; give its fixed offset, such as --zone +01:00";
        throw new LogError(this.file, `line ${line}`, `in ${this.zone.id} the clock skipped this hour: ${hint}`);
      }
      const later = this.zone.laterInstant(local);
      if (later !== earlier) {
        this.doubtful ||= this.#last === Number.NEGATIVE_INFINITY;
        if (earlier < this.#last) instant = later;
      }
    }
    this.#last = instant;
    return instant;
  }
}

/**
 * The instant of a stamp of the setup: ISO 8601, in the zone unless it names its offset.
 * @throws UsageError if there is no such time
 */
export function givenInstant(text: string, zoneId: string): number {
  const bytes = new TextEncoder().encode(text);
  const reader = new StampReader();
  const isRead = reader.readDateTime(bytes, 0, bytes.length);
  const local = isRead ? dayOf(reader.packedDate, reader.form, "ymd") * 1000 + reader.timeOfDay : Number.NaN;
  if (Number.isNaN(local)) throw new UsageError(`the setup states start: ${text}, which is no date and time`);
  if (reader.offset !== NO_OFFSET) return local - reader.offset * MINUTE;
  const instant = TimeZone.open(zoneId, local, local).earlierInstant(local);
  if (Number.isNaN(instant)) {
    throw new UsageError(`the setup states start: ${text}, which the clock of ${zoneId} skipped; add an offset`);
  }
  return instant;
}
