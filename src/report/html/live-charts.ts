/// <reference lib="dom" />
import type * as Vega from "vega";
import type { Chart, Columns, rowsOf } from "../charts/chart.js";
import type { formatAgainstLimits } from "../numbers.js";
import type { ChartWords } from "../wording-page.js";

/** What a figure of the page hands to its live view. */
export interface LiveChart extends Pick<Chart, "kind" | "data" | "extent" | "offset" | "unit" | "limit"> {
  readonly spec: Vega.Spec;
  readonly decimals: number;
}

export interface Tools {
  readonly vega: typeof Vega;
  readonly rowsOf: typeof rowsOf;
  readonly formatAgainstLimits: typeof formatAgainstLimits;
  readonly words: ChartWords;
}

/**
 * Runs in the reader's browser: each static picture becomes a live one as it scrolls into view. The page carries the
 * text of this function, so it uses nothing from outside but its argument and the browser.
 */
export function liveCharts({ vega, rowsOf, formatAgainstLimits, words }: Tools): void {
  const SHORTEST_SPAN = 3_600_000;
  const tip = document.createElement("div");
  tip.className = "tip";
  tip.hidden = true;
  document.body.append(tip);

  const showTip = (lines: readonly string[], event: MouseEvent) => {
    tip.replaceChildren(
      ...lines.map((text) => {
        const line = document.createElement("div");
        line.textContent = text;
        return line;
      }),
    );
    tip.hidden = false;
    const { clientWidth, clientHeight } = document.documentElement;
    tip.style.left = `${Math.max(4, Math.min(event.clientX + 14, clientWidth - tip.offsetWidth - 4))}px`;
    tip.style.top = `${Math.max(4, Math.min(event.clientY + 14, clientHeight - tip.offsetHeight - 4))}px`;
  };
  const hideTip = () => {
    tip.hidden = true;
  };

  const withUnit = (text: string, unit: string | undefined) =>
    unit === undefined || unit === "1" ? text : `${text} ${unit}`;

  /** Row numbers of each phase in a data set. */
  const rowsByPhase = (columns: Columns): Map<string, number[]> => {
    const phases = new Map<string, number[]>();
    for (const [i, phase] of (columns.phase as string[]).entries())
      phases.set(phase, [...(phases.get(phase) ?? []), i]);
    return phases;
  };

  const timeReader = (chart: LiveChart) => {
    const columns = chart.data.profile as Columns;
    const grid = columns.t as { start: number; step: number; steps: number[] };
    const column = (name: string) => columns[name] as (number | null)[] | undefined;
    const print = (value: number) => formatAgainstLimits(value, chart.limit, chart.decimals);
    const places = [...rowsByPhase(columns)].map(
      ([phase, rows]) => [phase, new Map(rows.map((row) => [grid.steps[row] as number, row]))] as const,
    );
    const clock = new Intl.DateTimeFormat("en-GB", {
      timeZone: "UTC",
      weekday: "short",
      day: "numeric",
      month: "short",
      hour: "2-digit",
      minute: "2-digit",
    });
    return (time: number): string[] => {
      const slot = Math.floor((time - grid.start) / grid.step);
      const lines = [`${clock.format(grid.start + slot * grid.step)} (${chart.offset})`];
      for (const [phase, rows] of places) {
        const row = rows.get(slot);
        const value = row === undefined ? null : (column("v")?.[row] ?? null);
        if (row === undefined || value === null) continue;
        const [low, high, out] = ["low", "high", "out"].map((name) => column(name)?.[row] ?? null);
        const range = low == null || high == null ? "" : ` (${print(low)} ${words.extremes} ${print(high)})`;
        lines.push(`${phase} ${withUnit(print(value), chart.unit)}${range}${out == null ? "" : `, ${words.outside}`}`);
      }
      return lines;
    };
  };

  const curveReader = (chart: LiveChart) => {
    const columns = chart.data.shares as Columns;
    const [xs, shares] = [columns.x as number[], columns.share as number[]];
    const phases = [...rowsByPhase(columns)];
    return (value: number): string[] => [
      withUnit(formatAgainstLimits(value, chart.limit, chart.decimals), chart.unit),
      ...phases.map(([phase, rows]) => {
        const below = rows.filter((row) => (xs[row] as number) <= value);
        const last = below[below.length - 1];
        return `${phase}: ${last === undefined ? 0 : shares[last]} ${words.atOrBelow}`;
      }),
    ];
  };

  /** Zoom and pan of a time axis: wheel, drag, keys and buttons change the span that is shown. */
  const addSpan = (
    figure: HTMLElement,
    host: HTMLElement,
    extent: readonly [number, number],
    timeAt: (event: MouseEvent) => number,
    showSpan: (span: readonly [number, number] | null) => void,
  ) => {
    let span: readonly [number, number] = extent;
    const show = (from: number, length: number) => {
      const whole = extent[1] - extent[0];
      const size = Math.min(whole, Math.max(Math.min(SHORTEST_SPAN, whole), length));
      const start = Math.min(Math.max(from, extent[0]), extent[1] - size);
      span = [start, start + size];
      hideTip();
      figure.dataset.span = span.join(" ");
      showSpan(size === whole ? null : span);
    };
    const zoom = (factor: number, around = (span[0] + span[1]) / 2) =>
      show(around - (around - span[0]) * factor, (span[1] - span[0]) * factor);
    const pan = (share: number) => show(span[0] + (span[1] - span[0]) * share, span[1] - span[0]);
    const reset = () => show(extent[0], extent[1] - extent[0]);

    const keys: Record<string, () => void> = {
      "+": () => zoom(0.5),
      "=": () => zoom(0.5),
      "-": () => zoom(2),
      ArrowLeft: () => pan(-0.25),
      ArrowRight: () => pan(0.25),
      "0": reset,
      Escape: reset,
    };
    host.addEventListener("keydown", (event) => {
      const action = event.ctrlKey || event.metaKey || event.altKey ? undefined : keys[event.key];
      if (action === undefined) return;
      event.preventDefault();
      action();
    });
    host.addEventListener(
      "wheel",
      (event) => {
        if (!event.ctrlKey && document.activeElement !== host) return;
        event.preventDefault();
        zoom(event.deltaY < 0 ? 0.7 : 1 / 0.7, timeAt(event));
      },
      { passive: false },
    );
    let grip: number | undefined;
    host.addEventListener("pointerdown", (event) => {
      grip = timeAt(event);
      host.setPointerCapture(event.pointerId);
    });
    host.addEventListener("pointermove", (event) => {
      if (grip !== undefined && event.buttons !== 0) show(span[0] + grip - timeAt(event), span[1] - span[0]);
    });
    for (const end of ["pointerup", "pointercancel"])
      host.addEventListener(end, () => {
        grip = undefined;
      });

    const controls = document.createElement("div");
    controls.className = "controls";
    for (const [text, action] of [
      [words.zoomIn, () => zoom(0.5)],
      [words.zoomOut, () => zoom(2)],
      [words.earlier, () => pan(-0.5)],
      [words.later, () => pan(0.5)],
      [words.reset, reset],
    ] as const) {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = text;
      button.addEventListener("click", action);
      controls.append(button);
    }
    const hint = document.createElement("span");
    hint.textContent = words.hint;
    controls.append(hint);
    host.after(controls);
    host.tabIndex = 0;
  };

  const widthOf = (spec: Vega.Spec, name: string): number => {
    const signal = (spec.signals ?? []).find((one) => one.name === name) as { value?: number } | undefined;
    return Number(signal?.value ?? spec.width);
  };

  const start = async (figure: HTMLElement) => {
    const host = figure.querySelector<HTMLElement>(".picture");
    const json = figure.querySelector("script")?.textContent;
    if (host === null || json === undefined || json === null) return;
    const chart = JSON.parse(json) as LiveChart;
    const data = (chart.spec.data ?? []).map((set) => {
      const columns = chart.data[set.name];
      return columns === undefined ? set : { ...set, values: rowsOf(columns) };
    });
    const widthName = (chart.spec.signals ?? []).some(({ name }) => name === "child_width") ? "child_width" : "width";
    const picture = host.querySelector("svg") as SVGSVGElement;
    /** What stands beside the plot, as Vega lays a chart out only once: taken from the picture shown before. */
    let beside = Number(picture.getAttribute("width")) - widthOf(chart.spec, widthName);
    let view: Vega.View | undefined;
    let shownSpan: readonly [number, number] | null = null;
    const draw = async () => {
      const stage = document.createElement("div");
      const next = new vega.View(vega.parse({ ...chart.spec, data } as Vega.Spec), {
        renderer: "svg",
        hover: false,
        tooltip: (_handler: unknown, event: MouseEvent, _item: unknown, value: unknown) => {
          if (chart.kind !== "marks") return;
          if (value === null || typeof value !== "object") hideTip();
          else
            showTip(
              Object.entries(value).map(([name, text]) => `${name}: ${text}`),
              event,
            );
        },
      }).initialize(stage);
      if (chart.kind !== "marks") {
        const room = Math.min(host.clientWidth, Number(figure.dataset.width));
        next.signal(widthName, Math.max(160, Math.floor(room - beside)));
      }
      if (chart.kind === "time") next.signal("span", shownSpan);
      await next.runAsync();
      host.replaceChildren(stage);
      view?.finalize();
      view = next;
      beside = Number(stage.querySelector("svg")?.getAttribute("width")) - Number(next.signal(widthName));
    };
    /** Twice where the names beside the plot turn out longer or shorter than they were. */
    const fitWidth = async () => {
      const before = beside;
      await draw();
      if (chart.kind !== "marks" && Math.abs(beside - before) > 4) await draw();
    };
    await fitWidth();
    figure.dataset.live = "yes";
    if (chart.kind === "marks") return;
    let redraw: ReturnType<typeof setTimeout> | undefined;
    let room = host.clientWidth;
    addEventListener("resize", () => {
      if (host.clientWidth === room) return;
      room = host.clientWidth;
      clearTimeout(redraw);
      redraw = setTimeout(() => void fitWidth(), 150);
    });

    const current = () => view as Vega.View;
    const xAt = (event: MouseEvent): number => {
      const svg = host.querySelector("svg") as SVGSVGElement;
      const box = svg.getBoundingClientRect();
      const scale = Number(svg.getAttribute("width")) / box.width;
      const left = (current().origin()[0] as number) + (current().padding() as { left: number }).left;
      return (event.clientX - box.left) * scale - left;
    };
    const valueAt = (event: MouseEvent) =>
      Number((current().scale("x") as { invert(x: number): number | Date }).invert(xAt(event)));
    const read = chart.kind === "time" ? timeReader(chart) : curveReader(chart);
    host.addEventListener("pointermove", (event) => {
      const x = xAt(event);
      if (event.buttons === 0 && x >= 0 && x <= Number(current().signal(widthName)))
        showTip(read(valueAt(event)), event);
      else hideTip();
    });
    host.addEventListener("pointerleave", hideTip);
    if (chart.extent !== undefined)
      addSpan(figure, host, chart.extent, valueAt, (span) => {
        shownSpan = span;
        void current().signal("span", span).runAsync();
      });
  };

  const observer = new IntersectionObserver(
    (entries) => {
      for (const { isIntersecting, target } of entries)
        if (isIntersecting) {
          observer.unobserve(target);
          void start(target as HTMLElement);
        }
    },
    { rootMargin: "200px" },
  );
  for (const figure of document.querySelectorAll("figure.chart")) observer.observe(figure);

  document.documentElement.classList.add("live");
  addEventListener("beforeprint", () => {
    for (const details of document.querySelectorAll("details")) details.open = true;
  });
}
