import { describe, expect, test } from "vitest";
import { NO_OFFSET, StampReader } from "../../../src/formats/csv/stamp-reader.js";
import { DAY, HOUR, MINUTE } from "../../../src/recording/time.js";
import { failure, read, shuffled, starts, values } from "./log.js";

const T0 = "2026-03-14T12:30:00Z";
const T1 = "2026-03-14T12:40:00Z";
const T2 = "2026-03-14T12:50:00Z";

/** Three rows whose time cells are given. */
function rows(times: readonly string[], header = "Time", delimiter = ";"): string {
  const lines = times.map((time, i) => `${time}${delimiter}${230 + i}.5`);
  return `${header}${delimiter}U L1 [V]\n${lines.join("\n")}\n`;
}

describe("a stamp in one column", () => {
  test.each([
    ["ISO 8601", ["2026-03-14T12:30:00", "2026-03-14T12:40:00", "2026-03-14T12:50:00"]],
    ["ISO 8601 with a blank", ["2026-03-14 12:30", "2026-03-14 12:40", "2026-03-14 12:50"]],
    ["ISO 8601 basic", ["20260314T1230", "20260314T1240", "20260314T1250"]],
    ["ISO 8601 basic with seconds", ["20260314T123000Z", "20260314T124000Z", "20260314T125000Z"]],
    ["Z", ["2026-03-14T12:30:00Z", "2026-03-14T12:40:00Z", "2026-03-14T12:50:00Z"]],
    ["an offset", ["2026-03-14T13:30:00+01:00", "2026-03-14T13:40:00+01:00", "2026-03-14T13:50:00+01:00"]],
    ["offsets that change", ["2026-03-14T13:30:00+0100", "2026-03-14T14:40:00 +02:00", "2026-03-14T09:20:00-0330"]],
    ["the word UTC", ["2026-03-14 12:30 UTC", "2026-03-14 12:40 UTC", "2026-03-14 12:50 UTC"]],
    ["UTC with an offset", ["2026-03-14 13:30 UTC+1", "2026-03-14 13:40 UTC+1", "2026-03-14 13:50 UTC+1"]],
    ["d.m.y", ["14.03.2026 12:30", "14.03.2026 12:40", "14.03.2026 12:50"]],
    ["d.m.y without leading zeros", ["14.3.2026 12:30:00", "14.3.2026 12:40:00", "14.3.2026 12:50:00"]],
    ["d. m. y", ["14. 3. 2026 12:30:00", "14. 3. 2026 12:40:00", "14. 3. 2026 12:50:00"]],
    ["d.m.y of two digits", ["14.03.26 12:30", "14.03.26 12:40", "14.03.26 12:50"]],
    ["d/m/y by a day above 12", ["14/03/2026 12:30", "14/03/2026 12:40", "14/03/2026 12:50"]],
    ["m/d/y by a day above 12", ["03/14/2026 12:30", "03/14/2026 12:40", "03/14/2026 12:50"]],
    ["y/m/d", ["2026/03/14 12:30", "2026/3/14 12:40", "2026/03/14 12:50"]],
    ["d-m-y", ["14-03-2026 12:30", "14-03-2026 12:40", "14-03-2026 12:50"]],
    ["the name of the month", ["14-Mar-2026 12:30", "14-MAR-2026 12:40", "14-mar-26 12:50"]],
    ["its German name", ["14. März 2026 12:30", "14 Mrz 2026 12:40", "14.Maerz.2026, 12:50"]],
    ["its name in other languages", ["14 mars 2026 12:30", "14 marzo 2026 12:40", "14/mar/2026 12:50"]],
    ["a 12-hour clock", ["3/14/2026 12:30:00 PM", "3/14/2026 12:40:00 pm", "3/14/2026 12:50:00 p.m."]],
    [
      "a no-break space before PM",
      ["3/14/2026 12:30:00\u202fPM", "3/14/2026 12:40:00\u00a0PM", "3/14/2026 12:50:00PM"],
    ],
    ["a fraction of a second", ["2026-03-14 12:30:00.000", "2026-03-14 12:40:00.0000000", "2026-03-14 12:50:00,000"]],
    ["points in the time of day", ["14.03.2026 12.30.00", "14.03.2026 12.40.00", "14.03.2026 12.50.00"]],
    ["a comma after the date", ["14.03.2026, 12:30", "14.03.2026, 12:40", "14.03.2026, 12:50"]],
    ["seconds since 1970", ["1773491400", "1773492000", "1773492600"]],
    ["seconds with a fraction", ["1773491400.0", "1773492000.0", "1773492600.0"]],
    ["milliseconds since 1970", ["1773491400000", "1773492000000", "1773492600000"]],
    ["spreadsheet days", ["46095.5208333333", "46095.5277777778", "46095.5347222222"]],
    ["spreadsheet days cut short", ["46095.52083", "46095.52778", "46095.53472"]],
    ["spreadsheet days with a comma", ["46095,5208333333", "46095,5277777778", "46095,5347222222"]],
  ])("%s", async (_, times) => {
    const recording = await read(rows(times));
    expect(starts(recording)).toEqual([T0, T1, T2]);
    expect(values(recording)).toEqual([230.5, 231.5, 232.5]);
    expect(recording.ledger.remarks.map(String)).toEqual([]);
  });

  test("two-digit years from 80 on lie in the last century", async () => {
    expect(starts(await read(rows(["14.03.80 12:30", "14.03.80 12:40"])))[0]).toBe("1980-03-14T12:30:00Z");
    expect(starts(await read(rows(["14.03.79 12:30", "14.03.79 12:40"])))[0]).toBe("2079-03-14T12:30:00Z");
  });

  test("midnight and noon on a 12-hour clock", async () => {
    const times = ["11:50 PM", "12:00 AM", "12:10 AM"].map((t, i) => `3/${i === 0 ? 14 : 15}/2026 ${t}`);
    const noon = ["11:50 AM", "12:00 PM", "12:10 PM"].map((t) => `3/15/2026 ${t}`);
    expect(starts(await read(rows(times)))).toEqual([
      "2026-03-14T23:50:00Z",
      "2026-03-15T00:00:00Z",
      "2026-03-15T00:10:00Z",
    ]);
    expect(starts(await read(rows(noon)))[1]).toBe("2026-03-15T12:00:00Z");
  });

  test("24:00 is the midnight that ends the day, and a date alone is the one that begins it", async () => {
    const day = ["2026-03-14 23:50", "2026-03-14 24:00", "2026-03-15 00:10"];
    expect(starts(await read(rows(day)))[1]).toBe("2026-03-15T00:00:00Z");
    const cut = ["14.03.2026", "14.03.2026 00:10", "14.03.2026 00:20"];
    const recording = await read(rows(cut));
    expect(starts(recording)[0]).toBe("2026-03-14T00:00:00Z");
    expect(recording.ledger.remarks.map(String)).toEqual([
      "log.csv: a stamp without a time of day was read as midnight (once)",
    ]);
  });
});

describe("a stamp in two columns", () => {
  const lines = (form: (i: number) => string) => `${[0, 1, 2].map((i) => `${form(i)};${230 + i}.5`).join("\n")}\n`;
  test.each([
    ["date and time", `Date;Time;U L1 [V]\n${lines((i) => `14.03.2026;12:${3 + i}0`)}`],
    ["time and date", `Time;Date;U L1 [V]\n${lines((i) => `12:${3 + i}0:00;14.03.2026`)}`],
    ["apart from one another", `Date;No.;Time;U L1 [V]\n${lines((i) => `2026-03-14;${i};12:${3 + i}0`)}`],
    ["with a 12-hour clock", `Date;Time;U L1 [V]\n${lines((i) => `3/14/2026;12:${3 + i}0:00 PM`)}`],
    ["with yyyymmdd", `Date;Time;U L1 [V]\n${lines((i) => `20260314;12:${3 + i}0`)}`],
    [
      "with a date that carries an empty time",
      `Date;Time;U L1 [V]\n${lines((i) => `14.03.2026 00:00:00;12:${3 + i}0`)}`,
    ],
  ])("%s", async (_, text) => {
    const recording = await read(text);
    expect(starts(recording)).toEqual([T0, T1, T2]);
    expect(values(recording)).toEqual([230.5, 231.5, 232.5]);
    expect(recording.ledger.columns.filter((c) => String(c.reason) === "the time of each row").length).toBe(2);
  });
});

describe("the order of day and month", () => {
  const over = (dates: readonly string[]) =>
    rows(dates.flatMap((date) => [0, 6, 12, 18].map((h) => `${date} ${String(h).padStart(2, "0")}:00`)));
  const first = async (text: string, setup = {}) => starts(await read(text, setup))[0]?.slice(0, 10);

  test("is asked for when the dates fit both", async () => {
    const asked = (days: string, options: string) =>
      `LogError: log.csv: its dates can be read in more than one order (the first is ${days}): say which with ${options} (in the setup dateOrder: dmy)`;
    const two = asked("2026-02-01 or 2026-01-02", "--date-order dmy or --date-order mdy");
    expect(await failure(over(["01/02/2026"]))).toBe(two);
    expect(await failure(over(["01/02/2026", "03/02/2026"]))).toBe(two);
    expect(await failure(over(["01-02-2026"]))).toBe(two);
    expect(await failure(over(["01/02/03"]))).toBe(
      asked("2003-02-01 or 2003-01-02 or 2001-02-03", "--date-order dmy or --date-order mdy or --date-order ymd"),
    );
  });

  test("is taken as given", async () => {
    expect(await first(over(["01/02/2026"]), { dateOrder: "dmy" })).toBe("2026-02-01");
    expect(await first(over(["01/02/2026"]), { dateOrder: "mdy" })).toBe("2026-01-02");
    expect(await first(over(["01/02/03"]), { dateOrder: "ymd" })).toBe("2001-02-03");
    expect(await first(over(["01.02.2026"]), { dateOrder: "mdy" })).toBe("2026-01-02");
    expect(await first(over(["2026-02-01"]), { dateOrder: "dmy" })).toBe("2026-02-01");
    expect(await failure(over(["01/02/2026"]), { dateOrder: "ymd" })).toContain("the year stands last in this log");
  });

  test("given wrongly is refused where only another one makes the days follow one another", async () => {
    const days = (written: (day: string) => string) =>
      over(Array.from({ length: 9 }, (_, i) => written(String(i + 1).padStart(2, "0"))));
    const said = (given: string, shown: string) =>
      `UsageError: the date order is given as ${given}, but the days of log.csv follow one another only as ${shown}: give ${shown}, or leave the date order out`;
    const dmy = days((day) => `${day}/03/2026`);
    expect(await failure(dmy, { dateOrder: "mdy" })).toBe(said("mdy", "dmy"));
    expect(await first(dmy, { dateOrder: "dmy" })).toBe("2026-03-01");
    expect(
      await failure(
        days((day) => `03/${day}/2026`),
        { dateOrder: "dmy" },
      ),
    ).toBe(said("dmy", "mdy"));
    expect(
      await failure(
        days((day) => `${day}.03.2026`),
        { dateOrder: "mdy" },
      ),
    ).toBe(said("mdy", "dmy"));
    expect(
      await failure(
        days((day) => `26-03-${day}`),
        { dateOrder: "dmy" },
      ),
    ).toBe(said("dmy", "ymd"));
    expect(await first(over(["01/02/2026", "01/05/2026", "01/09/2026"]), { dateOrder: "dmy" })).toBe("2026-02-01");
  });

  test("shows where the days follow one another, in any order of rows", async () => {
    const dmy = over(["01/02/2026", "02/02/2026", "03/02/2026"]);
    const mdy = over(["02/01/2026", "02/02/2026", "02/03/2026"]);
    const [header, ...lines] = mdy.trimEnd().split("\n");
    const mixed = `${[header, ...shuffled(lines, 7)].join("\n")}\n`;
    expect(await first(dmy)).toBe("2026-02-01");
    expect(await first(mdy)).toBe("2026-02-01");
    expect(await first(mixed)).toBe("2026-02-01");
    expect(String((await read(dmy)).ledger.timeBase.stampForm)).toBe(
      "d/m/y hh:mm, only so do the days follow one another",
    );
    expect(await first(over(["11/12/26", "12/12/26"]))).toBe("2026-12-11");
    expect(await first(over(["26/12/11", "26/12/12"]))).toBe("2026-12-11");
  });

  test("shows in a number above 12", async () => {
    expect(await first(over(["12/02/2026", "13/02/2026"]))).toBe("2026-02-12");
    expect(await first(over(["02/12/2026", "02/13/2026"]))).toBe("2026-02-12");
    expect(String((await read(over(["13/02/2026"]))).ledger.timeBase.stampForm)).toBe(
      "d/m/y hh:mm, no other order fits all dates",
    );
  });

  test("does not matter where it makes no difference", async () => {
    expect(await first(over(["02/02/2026"]))).toBe("2026-02-02");
  });

  test("is not turned round by one damaged stamp", async () => {
    const week = ["03/01/2026", "03/02/2026", "03/03/2026", "03/04/2026", "13/05/2026", "03/06/2026", "03/07/2026"];
    expect(await failure(over(week))).toContain("say which with --date-order");
    expect(await failure(over(week), { dateOrder: "mdy" })).toBe(
      "LogError: log.csv, line 18: there is no such date, read as month, day, year; correct it or delete the row",
    );
  });
});

test("every month is known by its name in five languages", async () => {
  for (const language of ["en", "de", "fr", "it", "es"]) {
    for (let month = 0; month < 12; month++) {
      const day = new Date(Date.UTC(2026, month, 9));
      for (const style of ["long", "short"] as const) {
        const name = new Intl.DateTimeFormat(language, { month: style, timeZone: "UTC" }).format(day);
        const recording = await read(rows([`9-${name}-2026 12:30`, `9-${name}-2026 12:40`]));
        expect([name, starts(recording)[0]]).toEqual([name, `${day.toISOString().slice(0, 10)}T12:30:00Z`]);
        expect(String(recording.ledger.timeBase.stampForm)).toBe("day, month, year hh:mm, by the name of the month");
      }
    }
  }
});

describe("what is no stamp", () => {
  test.each(["31 Feb 2026 12:30", "9 Foo 2026 12:30", "9 Mar 026 12:30"])("%s", async (stamp) => {
    expect(await failure(rows(["9 Mar 2026 12:20", stamp, "9 Mar 2026 12:40"]))).toMatch(/^LogError: log\.csv, line 3/);
  });

  test.each([
    [
      "2026-02-30 00:10",
      "LogError: log.csv, line 3: there is no such date, read as year, month, day; correct it or delete the row",
    ],
    [
      "1969-12-31 00:10",
      "LogError: log.csv, line 3: there is no such date, read as year, month, day; correct it or delete the row",
    ],
    [
      "2026-02-01 25:10",
      'LogError: log.csv, line 3, column 1: "2026-02-01 25:10" is not a date and time in "Time"; correct the cell or delete the row',
    ],
    [
      "2026-02-01 00:60",
      'LogError: log.csv, line 3, column 1: "2026-02-01 00:60" is not a date and time in "Time"; correct the cell or delete the row',
    ],
    [
      "",
      'LogError: log.csv, line 3, column 1: "" is not a date and time in "Time"; correct the row, or delete it and all below it if the data end above',
    ],
    [
      "total",
      'LogError: log.csv, line 3, column 1: "total" is not a date and time in "Time"; correct the row, or delete it and all below it if the data end above',
    ],
    [
      "01.02.2026 00:10",
      "LogError: log.csv, line 3: the stamp is written in another form than in the rows above: write all stamps alike",
    ],
    [
      "2026-02-01 00:10Z",
      "LogError: log.csv, line 3: the stamp is written in another form than in the rows above: write all stamps alike",
    ],
    [
      "2026-02-01 00:10 am",
      'LogError: log.csv, line 3, column 1: "2026-02-01 00:10 am" is not a date and time in "Time"; correct the cell or delete the row',
    ],
    [
      "2026-02-01 01:10 am",
      "LogError: log.csv, line 3: the stamp is written in another form than in the rows above: write all stamps alike",
    ],
  ])("%s", async (stamp, message) => {
    const text = rows(["2026-02-01 00:00", stamp, "2026-02-01 00:20", "2026-02-01 00:30", "2026-02-01 00:40"]);
    expect(await failure(text)).toBe(message);
  });

  test("a damaged stamp in the very first row", async () => {
    const text = rows(["2O26-02-01 00:00", "2026-02-01 00:10", "2026-02-01 00:20"]).replaceAll(/;(\d+\.\d)/g, ";$1;$1");
    expect(await failure(text.replace("[V]", "[V];U L2 [V]"))).toBe(
      'LogError: log.csv, line 2, column 1: "2O26-02-01 00:00" is not a date and time in "Time"; correct the cell or delete the row',
    );
  });

  test("a Unix time that leaves its range", async () => {
    expect(await failure(rows(["1773491400", "1773492000", "-5", ...Array(20).fill("1773492600")]))).toBe(
      'LogError: log.csv, line 4, column 1: "-5" is not a Unix time of the years 1970 to 2199 in "Time"; correct the cell or delete the row',
    );
  });
});

describe("which end of its interval a stamp marks", () => {
  const text = (header: string, preamble = "") => preamble + rows(["2026-03-14 12:30", "2026-03-14 12:40"], header);
  test.each([
    ["Time", "", "start", "assumed", T0],
    ["Interval start", "", "start", "inferred", T0],
    ["Beginn", "", "start", "inferred", T0],
    ["End of interval", "", "end", "inferred", "2026-03-14T12:20:00Z"],
    ["Intervallende", "", "end", "inferred", "2026-03-14T12:20:00Z"],
    ["Zeit bis", "", "end", "inferred", "2026-03-14T12:20:00Z"],
    ["Fin", "", "end", "inferred", "2026-03-14T12:20:00Z"],
    ["Time", "Stamps mark the end of the interval\n", "end", "inferred", "2026-03-14T12:20:00Z"],
    ["Time", "Start: 2026-03-14\n", "start", "assumed", T0],
  ])("header %j below %j: %s, %s", async (header, preamble, label, origin, start) => {
    const recording = await read(text(header, preamble));
    expect(starts(recording)[0]).toBe(start);
    expect(recording.ledger.timeBase).toMatchObject({ intervalLabel: label, labelOrigin: origin });
  });

  test("the setup wins", async () => {
    const recording = await read(text("Interval start"), { intervalLabel: "end" });
    expect(starts(recording)[0]).toBe("2026-03-14T12:20:00Z");
    expect(recording.ledger.timeBase).toMatchObject({ intervalLabel: "end", labelOrigin: "given" });
  });

  test("of a start and an end column the start is used and the end is listed", async () => {
    const both = "To;From;U L1 [V]\n2026-03-14 12:40;2026-03-14 12:30;230.5\n2026-03-14 12:50;2026-03-14 12:40;231.5\n";
    const recording = await read(both);
    expect(starts(recording)).toEqual([T0, T1]);
    expect(recording.ledger.timeBase.labelOrigin).toBe("inferred");
    expect(String(recording.ledger.columns[0]?.reason)).toBe("not used: a time beside the one that is used");
  });
});

describe("the zone of stamps without offset", () => {
  const text = rows(["2026-07-14 12:30", "2026-07-14 12:40"]);
  const base = async (log: string, setup = {}) => {
    const recording = await read(log, setup);
    return [starts(recording)[0], recording.ledger.timeBase.zone, recording.ledger.timeBase.zoneOrigin];
  };

  test("is given, assumed, or named by the header or the stamps", async () => {
    expect(await base(text)).toEqual(["2026-07-14T12:30:00Z", "UTC", "assumed"]);
    expect(await base(text, { zone: "Europe/Vienna" })).toEqual(["2026-07-14T10:30:00Z", "Europe/Vienna", "given"]);
    expect(await base(text, { zone: "Asia/Kolkata" })).toEqual(["2026-07-14T07:00:00Z", "Asia/Kolkata", "given"]);
    expect(await base(text, { zone: "+01:00" })).toEqual(["2026-07-14T11:30:00Z", "+01:00", "given"]);
    expect(await base(text.replace("Time", "Time (UTC)"), { zone: "Europe/Vienna" })).toEqual([
      "2026-07-14T12:30:00Z",
      "Europe/Vienna",
      "given",
    ]);
    expect(await base(text.replace("Time", "Time [UTC+1]"))).toEqual(["2026-07-14T11:30:00Z", "+01:00", "stamps"]);
    expect(await base(rows(["2026-07-14 12:30+02:00", "2026-07-14 12:40+02:00"]), { zone: "Europe/London" })).toEqual([
      "2026-07-14T10:30:00Z",
      "Europe/London",
      "given",
    ]);
    expect(await base(rows(["1784032200", "1784032800"]), { zone: "Europe/Vienna" })).toEqual([
      "2026-07-14T12:30:00Z",
      "Europe/Vienna",
      "given",
    ]);
    expect(await base(rows(["2026-07-14 12:30Z", "2026-07-14 12:40Z"]))).toEqual([
      "2026-07-14T12:30:00Z",
      "UTC",
      "stamps",
    ]);
    expect(await failure(text, { zone: "Europe/Wien" })).toContain(
      'UsageError: "Europe/Wien" is not a known time zone',
    );
    const stated = [rows(["2026-07-14 12:30Z", "2026-07-14 12:40Z"]), text.replace("Time", "Time (UTC)")];
    for (const log of stated) {
      expect(await failure(log, { zone: "Mars/Olympus" })).toContain(
        'UsageError: "Mars/Olympus" is not a known time zone',
      );
    }
  });

  test("the form of the stamps tells what decided their instants", async () => {
    const form = async (log: string) => String((await read(log, { zone: "Europe/Vienna" })).ledger.timeBase.stampForm);
    expect(await form(text)).toBe("y-m-d hh:mm, year first");
    expect(await form(text.replace("Time", "Time (UTC)"))).toBe("y-m-d hh:mm, year first, in UTC by the header");
    expect(await form(rows(["2026-07-14 12:30Z", "2026-07-14 12:40Z"]))).toBe(
      "y-m-d hh:mm with offset from UTC, year first",
    );
  });
});

describe("the stamp reader", () => {
  const reader = new StampReader();
  const read = (text: string) => {
    const bytes = new TextEncoder().encode(text);
    return reader.readDateTime(bytes, 0, bytes.length);
  };

  test("keeps fractions to the microsecond", () => {
    expect(read("2026-03-14T00:00:01.2345678")).toBe(true);
    expect(reader.timeOfDay).toBe(1_234_568);
    expect(read("2026-03-14T23:59:59:250")).toBe(true);
    expect(reader.timeOfDay).toBe(DAY - 750_000);
  });

  test("tells offsets and their absence", () => {
    expect(read("2026-03-14 01:02") && reader.offset).toBe(NO_OFFSET);
    expect(read("2026-03-14 01:02 -03:30") && reader.offset).toBe(-210);
    expect(reader.timeOfDay).toBe(HOUR + 2 * MINUTE);
  });

  test.each([
    "2026-03-14 1:2",
    "2026-03",
    "14.03.2026.",
    "2026-03/14 00:00",
    "2026-03-14x00:00",
    "2026-03-14T00:00Q",
    "231.4",
    "12:30",
    "2026-03-14 13:00 PM",
    "2026-03-1400:00",
    "1.2.3",
    "2026-03-14 00:00+25:00",
    "2026-03-14 24:01",
  ])("%s is none", (text) => expect(read(text)).toBe(false));
});
