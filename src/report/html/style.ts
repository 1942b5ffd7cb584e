/** The page's style: one column, readable on paper, in black and white and on a phone. */
export const STYLE = `
:root { color-scheme: light; --ink: #1d1d1b; --soft: #55534e; --line: #cfccc4; --paper: #ffffff; --pale: #f5f4f0; --alert: #8c1d18; }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; }
body { margin: 0 auto; max-width: 68rem; padding: 1.2rem 1.2rem 4rem; background: var(--paper); color: var(--ink);
  font: 1rem/1.5 system-ui, "Liberation Sans", "DejaVu Sans", Arial, sans-serif; overflow-wrap: anywhere; }
header p { margin: 0; }
.kind { font-weight: 600; color: var(--soft); }
.place { font-size: 1.15rem; }
h1 { font-size: 1.45rem; line-height: 1.35; font-weight: 600; margin: .3rem 0 .6rem; }
h2 { font-size: 1.2rem; margin: 2.2rem 0 .6rem; padding-bottom: .2rem; border-bottom: 2px solid var(--ink); }
h3 { font-size: 1.05rem; margin: 1.6rem 0 .5rem; }
small, .note { font-size: .84rem; color: var(--soft); }
.note { margin: .4rem 0; }
nav { margin-top: 2rem; font-size: .9rem; }
nav a { margin-right: 1rem; }
a { color: inherit; }
.statement { margin: 1rem 0; padding: .8rem 1.1rem; border: 1px solid var(--line); border-left: .5rem solid var(--soft); background: var(--pale); }
.statement.does-not-conform { border-left-color: var(--alert); }
.statement p { margin: 0; }
.statement .word { font-weight: 700; text-transform: uppercase; letter-spacing: .06em; font-size: .85rem; }
.danger { margin: 1rem 0; padding: .8rem 1.1rem; border: .25rem double var(--alert); }
.danger h2 { margin: 0; border: 0; text-transform: uppercase; color: var(--alert); }
table { border-collapse: collapse; width: 100%; font-size: .88rem; line-height: 1.35; }
th, td { text-align: left; vertical-align: top; padding: .35rem .6rem .35rem 0; border-bottom: 1px solid var(--line); overflow-wrap: break-word; }
thead th { border-bottom: 1.5px solid var(--ink); font-weight: 600; }
tbody th { font-weight: 600; }
tbody th small { font-weight: 400; }
.requirements > tbody > tr.requirement > * { border-bottom: 0; padding-bottom: 0; }
.requirements > tbody > tr.more > td { padding-top: .1rem; }
.wide { overflow-x: auto; margin: .6rem 0; }
.wide table { min-width: 34rem; }
.plain { margin: .6rem 0; }
.plain table.few { width: auto; }
.sideways { display: none; }
.few th, .few td { padding-right: 2.5rem; }
.wide table.details { min-width: 62rem; font-size: .8rem; }
code { font-size: .82rem; overflow-wrap: anywhere; }
summary { cursor: pointer; color: var(--soft); font-size: .84rem; }
.week > summary { font-size: .95rem; color: var(--ink); margin: .5rem 0; }
.verdict { display: inline-block; padding: 0 .4em; border: 1.5px solid var(--ink); border-radius: .2em; white-space: nowrap; font-weight: 600; }
.verdict.does-not-conform { background: var(--ink); color: var(--paper); -webkit-print-color-adjust: exact; print-color-adjust: exact; }
.verdict.undecided { border-style: dashed; }
.verdict.not-assessed, .verdict.for-information { border-color: transparent; padding: 0; font-weight: 400; }
.unconfirmed { font-weight: 600; border-bottom: 1px dotted currentColor; white-space: nowrap; }
.figures { display: flex; flex-wrap: wrap; gap: 1.2rem 1.6rem; align-items: flex-start; }
figure { margin: 0; width: 100%; }
figure.marks, figure.curve { flex: 1 1 auto; }
figcaption { font-weight: 600; margin-bottom: .3rem; }
.picture { position: relative; overflow-x: auto; overflow-y: hidden; }
.picture:focus-visible, .picture:focus { outline: 2px solid var(--ink); outline-offset: 2px; }
.picture svg { display: block; max-width: none; }
figure.time .picture { touch-action: pan-y pinch-zoom; cursor: crosshair; }
.controls { display: flex; flex-wrap: wrap; gap: .3rem; align-items: center; margin-top: .3rem; font-size: .8rem; color: var(--soft); }
.live figure.time:not([data-live])::after { content: ""; display: block; height: 2.2rem; }
.controls button { font: inherit; color: var(--ink); background: var(--paper); border: 1px solid var(--soft); border-radius: .2em; padding: .15rem .5rem; cursor: pointer; }
.tip { position: fixed; z-index: 1; max-width: 20rem; padding: .3rem .6rem; background: var(--paper); border: 1px solid var(--ink); font-size: .82rem; pointer-events: none; }
@media (max-width: 44rem) {
  body { padding: .8rem .8rem 3rem; }
  h1 { font-size: 1.2rem; }
  table.cards, table.cards > tbody, table.cards > tbody > tr, table.cards > tbody > tr > th, table.cards > tbody > tr > td { display: block; width: 100%; }
  table.cards > thead { position: absolute; clip-path: inset(50%); height: 1px; width: 1px; overflow: hidden; }
  table.cards > tbody > tr > td[data-title] { position: relative; padding: .1rem 0 .1rem 8.8rem; min-height: 1.5em; }
  table.cards > tbody > tr > td[data-title]::before { content: attr(data-title); position: absolute; left: 0; width: 8.2rem; color: var(--soft); }
  table.cards > tbody > tr.more > td { padding-bottom: .6rem; margin-bottom: .4rem; }
  table.cards > tbody > tr > td:empty { display: none; }
  table.cards:not(.requirements, .events) > tbody > tr { padding: .5rem 0; border-bottom: 1.5px solid var(--ink); }
  table.cards:not(.requirements, .events) > tbody > tr > td { border-bottom: 0; }
  table.cards > tbody > tr.more { border-bottom: 1.5px solid var(--ink); }
  .sideways { display: block; }
  .live figure:not(.marks) .sideways { display: none; }
  .picture, .wide { box-shadow: inset -.6rem 0 .5rem -.5rem var(--soft); }
  .live figure:not(.marks) .picture, figure.event .picture { box-shadow: none; }
  .controls span { display: none; }
}
.finding { font-size: 1.05rem; font-weight: 600; }
.counts { width: auto; margin: .4rem 0; }
.counts caption { text-align: left; font-weight: 600; padding-bottom: .2rem; }
.counts th, .counts td { white-space: nowrap; padding: .25rem 1rem .25rem .5rem; border: 1px solid var(--line); font-variant-numeric: tabular-nums; }
.counts td.some { background: var(--pale); outline: 1.5px solid var(--ink); outline-offset: -1.5px; font-weight: 700; }
.tables { display: flex; flex-wrap: wrap; gap: 0 2rem; align-items: flex-start; }
.tables .wide { max-width: 100%; }
.wide table.counts { min-width: 0; }
.events > tbody > tr.event > * { border-bottom: 0; padding-bottom: 0; }
.events > tbody > tr.more > td { padding-top: .1rem; }
figure.event { flex: 1 1 24rem; max-width: 520px; }
figure.event .picture svg { width: 100%; height: auto; }
.paper { display: none; }
.printed { display: none; }
@page { size: A4; margin: 15mm 14mm 17mm; @bottom-right { content: counter(page) " / " counter(pages); font: 9pt sans-serif; } }
@page rows { size: A4 landscape; }
@media print {
  html { font-size: 9.5pt; }
  body { max-width: none; padding: 0; }
  h1 { font-size: 14pt; }
  h2, h3, figcaption { break-after: avoid; }
  table { font-size: 8pt; }
  nav, .controls, .tip, .sideways, .screen, tr.more:not(.on-paper) { display: none !important; }
  .paper { display: inline; }
  p.paper, ul.paper { display: block; }
  ul.paper { columns: 2; font-size: 8pt; }
  .requirements > tbody > tr.requirement > * { border-bottom: 1px solid var(--line); padding-bottom: .35rem; }
  .wide { overflow: visible; }
  .wide table { min-width: 0; font-size: 7pt; }
  .plain table { font-size: 7pt; }
  :is(.wide, .plain) :is(th, td) { padding: .15rem .5rem .15rem 0; }
  :is(.wide, .plain) small { font-size: inherit; }
  details:not(.week)::details-content { content-visibility: visible; block-size: auto; }
  .printed { display: block; page: rows; }
  .printed table { font-size: 7pt; }
  .printed th, .printed td { padding: .15rem .4rem .15rem 0; }
  figure, tr, .statement, .danger, li { break-inside: avoid; }
  tr.event { break-after: avoid; }
  .figures { gap: 3mm; }
  figure.full { flex: 1 0 100%; max-width: 100% !important; }
  figure.marks:not(.full) { flex: 0 1 57%; }
  figure.curve { flex: 0 1 40%; }
  figure.time::after { content: none !important; }
  .picture { overflow: visible; }
  .picture svg { max-width: 100%; height: auto; }
}
`;
