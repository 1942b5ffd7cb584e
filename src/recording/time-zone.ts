import { Temporal } from "temporal-polyfill";
import { UsageError } from "../errors.js";
import { DAY, type Duration, HOUR, type Instant, MINUTE, SECOND } from "./time.js";

/** A change of a zone's offset from UTC: before `at` the clock runs at `before`, from `at` on at `after`. */
export interface ZoneChange {
  readonly at: Instant;
  readonly before: Duration;
  readonly after: Duration;
}

/** What a clock on the wall shows. `weekday` runs from 1 (Monday) to 7 (Sunday), as in ISO 8601. */
export interface LocalClock {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly weekday: number;
  readonly hour: number;
  readonly minute: number;
  readonly second: number;
}

const MARGIN: Duration = 400 * DAY;
const FIXED_OFFSET = /^([+-])(\d\d):?(\d\d)$/;

/**
 * A time zone over a span of time. Its changes of offset are looked up once (IANA rules, through temporal-polyfill);
 * after that every conversion is arithmetic.
 * "Local" times are integer microseconds of the zone's clock, counted as if that clock were UTC.
 */
export class TimeZone {
  readonly id: string;
  /** In time order; all that fall into the span and 400 days on either side of it. */
  readonly changes: readonly ZoneChange[];
  /** Segment k runs from `starts[k]` to `starts[k + 1]` at `offsets[k]`. */
  readonly #starts: Float64Array;
  readonly #offsets: Float64Array;
  readonly #end: Instant;
  #last = 0;

  private constructor(id: string, from: Instant, to: Instant, offset: Duration, changes: readonly ZoneChange[]) {
    this.id = id;
    this.changes = changes;
    this.#starts = Float64Array.from([from, ...changes.map((c) => c.at)]);
    this.#offsets = Float64Array.from([offset, ...changes.map((c) => c.after)]);
    this.#end = to;
  }

  /**
   * @param id IANA zone ("Europe/Vienna"), "UTC", or a fixed offset ("+01:00").
   * @param from, to the span that will be asked about; 400 days on either side of it work as well.
   * @throws UsageError for an unknown zone.
   */
  static open(id: string, from: Instant, to: Instant): TimeZone {
    const fixed = fixedOffset(id);
    if (fixed !== undefined)
      return new TimeZone(fixed.id, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, fixed.offset, []);
    const [begin, end] = [from - MARGIN, to + MARGIN];
    const instant = Temporal.Instant.fromEpochMilliseconds(Math.floor(begin / 1000));
    let clock: ReturnType<typeof instant.toZonedDateTimeISO>;
    try {
      clock = instant.toZonedDateTimeISO(id);
    } catch {
      throw new UsageError(
        `"${id}" is not a known time zone: give an IANA name such as Europe/Vienna, UTC, or a fixed offset such as +01:00`,
      );
    }
    const first = clock.offsetNanoseconds / 1000;
    const changes: ZoneChange[] = [];
    for (;;) {
      const next = clock.getTimeZoneTransition("next");
      if (next === null || next.epochMilliseconds * 1000 > end) break;
      const [before, after] = [clock.offsetNanoseconds / 1000, next.offsetNanoseconds / 1000];
      if (before !== after) changes.push({ at: next.epochMilliseconds * 1000, before, after });
      clock = next;
    }
    return new TimeZone(clock.timeZoneId, begin, end, first, changes);
  }

  /** Local time minus UTC at an instant. @throws RangeError outside the span. */
  offsetAt(t: Instant): Duration {
    return this.#offsets[this.#segmentAt(t)] as number;
  }

  toLocal(t: Instant): number {
    return t + this.offsetAt(t);
  }

  /**
   * The instant at which the clock showed `local`; where it showed it twice, the first time. NaN where it never did
   * (the hour skipped in spring).
   */
  earlierInstant(local: number): Instant {
    const k = this.#firstSegmentEndingAfter(local);
    const t = local - (this.#offsets[k] as number);
    return t >= (this.#starts[k] as number) ? t : Number.NaN;
  }

  /** As `earlierInstant`, but where the clock showed `local` twice, the second time. */
  laterInstant(local: number): Instant {
    const k = this.#firstSegmentEndingAfter(local);
    const next = k + 1 < this.#starts.length ? local - (this.#offsets[k + 1] as number) : Number.NaN;
    return next >= (this.#starts[k + 1] as number) ? next : this.earlierInstant(local);
  }

  clockAt(t: Instant): LocalClock {
    const local = this.toLocal(t);
    const date = new Date(Math.floor(local / 1000));
    return {
      year: date.getUTCFullYear(),
      month: date.getUTCMonth() + 1,
      day: date.getUTCDate(),
      weekday: ((date.getUTCDay() + 6) % 7) + 1,
      hour: date.getUTCHours(),
      minute: date.getUTCMinutes(),
      second: date.getUTCSeconds(),
    };
  }

  /** "2026-03-29 03:10 +02:00"; seconds only where they are not zero. */
  localText(t: Instant): string {
    const offset = this.offsetAt(t);
    const local = t + offset;
    const iso = new Date(Math.floor(local / 1000)).toISOString();
    const time = local % MINUTE === 0 ? iso.slice(11, 16) : iso.slice(11, local % SECOND === 0 ? 19 : 23);
    return `${iso.slice(0, 10)} ${time} ${offsetText(offset)}`;
  }

  #segmentAt(t: Instant): number {
    if (!(t >= (this.#starts[0] as number) && t <= this.#end)) {
      throw new RangeError(`instant ${t} lies outside the span the zone ${this.id} was opened for`);
    }
    let k = this.#last;
    while (t < (this.#starts[k] as number)) k--;
    while (k + 1 < this.#starts.length && t >= (this.#starts[k + 1] as number)) k++;
    this.#last = k;
    return k;
  }

  #firstSegmentEndingAfter(local: number): number {
    const endsAfter = (k: number) =>
      k + 1 >= this.#starts.length || local < (this.#starts[k + 1] as number) + (this.#offsets[k] as number);
    let k = this.#last;
    while (k > 0 && endsAfter(k - 1)) k--;
    while (!endsAfter(k)) k++;
    this.#last = k;
    return k;
  }
}

/** "+02:00". */
export function offsetText(offset: Duration): string {
  const size = Math.abs(offset);
  const two = (n: number) => String(n).padStart(2, "0");
  return `${offset < 0 ? "-" : "+"}${two(Math.floor(size / HOUR))}:${two(Math.floor((size % HOUR) / MINUTE))}`;
}

/** What "UTC" or "+01:00" stands for; undefined for a zone with rules. */
function fixedOffset(id: string): { id: string; offset: Duration } | undefined {
  if (/^(utc|z)$/i.test(id)) return { id: "UTC", offset: 0 };
  const match = FIXED_OFFSET.exec(id);
  if (!match) return undefined;
  const [hours, minutes] = [Number(match[2]), Number(match[3])];
  if (hours > 18 || minutes > 59) return undefined;
  const offset = (match[1] === "-" ? -1 : 1) * (hours * HOUR + minutes * MINUTE);
  return { id: offsetText(offset), offset };
}
