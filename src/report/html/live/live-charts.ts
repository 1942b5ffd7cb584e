/// <reference lib="dom" />
import type * as Vega from "vega";
import type { Grid } from "../../charts/chart.js";
import type { LiveChart, Tools } from "./tools.js";

/** Each static picture of the page becomes a live one as it scrolls into view. */
export function liveCharts(tools: Tools): void {
  const { vega, rowsOf, words } = tools;
  const tip = tools.makeTip();

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
          if (value === null || typeof value !== "object") tip.hide();
          else
            tip.show(
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
    if (chart.kind === "marks") {
      figure.dataset.live = "yes";
      return;
    }
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
    const read = (chart.kind === "time" ? tools.timeReader : tools.curveReader)(chart, tools);
    host.addEventListener("pointermove", (event) => {
      const x = xAt(event);
      if (event.buttons === 0 && x >= 0 && x <= Number(current().signal(widthName)))
        tip.show(read(valueAt(event)), event);
      else tip.hide();
    });
    host.addEventListener("pointerleave", tip.hide);
    const { profile } = chart.data;
    if (chart.extent !== undefined && profile !== undefined)
      tools.addSpan({
        figure,
        host,
        extent: chart.extent,
        shortest: 6 * (profile.t as Grid).step,
        timeAt: valueAt,
        showSpan: (span) => {
          tip.hide();
          shownSpan = span;
          void current().signal("span", span).runAsync();
        },
        words,
      });
    figure.dataset.live = "yes";
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
  // Other weeks stay as the reader left them: on paper the table of weeks stands for them.
  addEventListener("beforeprint", () => {
    for (const details of document.querySelectorAll<HTMLDetailsElement>("details:not(.week)")) details.open = true;
  });
}
