/** The one style sheet of a chapter: a textbook page with a margin, on screen and on paper. */
export const chapterStyle = `
:root { --ink: #111; --soft: #555; --rule: #bbb; --paper: #fff; }
* { box-sizing: border-box; }
html { font: 17.5px/1.5 Charter, 'Bitstream Charter', 'Iowan Old Style', 'Source Serif 4', Georgia, serif; color: var(--ink); background: var(--paper); }
body { margin: 0 auto; padding: 2.5rem 1.5rem 4rem; max-width: 60rem; }
main { width: 38rem; max-width: 100%; }
h1 { font-size: 2rem; line-height: 1.2; margin: 0 0 1rem; text-wrap: balance; }
h2 { font-size: 1.35rem; line-height: 1.25; margin: 3.2rem 0 .6rem; clear: right; text-wrap: balance; }
h3 { font-size: 1rem; margin: 1.6rem 0 .4rem; }
blockquote { margin: .9rem 0; padding-left: 1.1rem; border-left: 1px solid var(--rule); }
pre { overflow-x: auto; font-size: .85rem; }
img { max-width: 100%; height: auto; }
sup { line-height: 0; }
.value { white-space: nowrap; font-variant-numeric: lining-nums; }
nav { display: flex; flex-wrap: wrap; gap: .4rem 1.6rem; margin-top: 1.2rem; }
.footnotes { font-size: .85rem; margin-top: 1.6rem; border-top: 1px solid var(--rule); }
p { margin: .7rem 0; }
:lang(de) p, :lang(de) li, :lang(de) td, :lang(de) label { hyphens: auto; }
.lead { font-size: 1.1rem; color: var(--soft); }
.answer { font-size: 1.15rem; font-weight: 600; }
aside { float: right; clear: right; width: 16.5rem; margin: .2rem -19rem 1rem 0; font: .82rem/1.45 system-ui, sans-serif; color: var(--soft); }
aside p { margin: 0 0 .6rem; }
aside.caution { border-top: 2px solid var(--ink); padding-top: .35rem; color: var(--ink); }
aside .word { font-weight: 700; }
figure { margin: 1.4rem 0; }
figure svg { display: block; width: 100%; max-width: 35rem; height: auto; }
figcaption, caption { font: 600 .95rem/1.35 system-ui, sans-serif; text-align: left; margin-bottom: .5rem; caption-side: top; }
details { font: .85rem/1.4 system-ui, sans-serif; margin: .5rem 0 0; }
summary { cursor: pointer; }
.scroll { margin: 1.2rem 0 .4rem; width: max-content; max-width: min(57rem, calc(100vw - 3rem)); }
.scroll.wide { clear: right; overflow-x: auto; }
table { border-collapse: collapse; font: .88rem/1.35 system-ui, sans-serif; font-variant-numeric: tabular-nums lining-nums; }
th, td { padding: .16rem 1.1rem .16rem 0; text-align: left; vertical-align: top; }
th { font-weight: 600; border-bottom: 1px solid var(--ink); vertical-align: bottom; }
th.pair { text-align: center; border-bottom: 1px solid var(--rule); }
th .unit { display: block; font-weight: 400; color: var(--soft); }
.number { text-align: right; white-space: nowrap; }
.short { white-space: nowrap; }
caption { white-space: nowrap; }
tbody tr:nth-child(5n+6) td { padding-top: .7rem; }
.notes { font: .8rem/1.4 system-ui, sans-serif; color: var(--soft); margin: .4rem 0 0; }
.solution { border-left: 1px solid var(--rule); padding-left: 1.1rem; margin: 1.4rem 0; }
.solution h3 { margin-top: 0; }
.solution ol { list-style: none; margin: 0; padding: 0; }
.solution li { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: .2rem 1rem; align-items: baseline; margin: .45rem 0; }
.solution math { overflow-x: auto; overflow-y: hidden; max-width: 100%; padding: .1rem 0; margin: 0; justify-self: start; }
.solution .note { font: .8rem/1.35 system-ui, sans-serif; color: var(--soft); max-width: 18rem; text-align: right; }
.solution .long math { font-size: .86em; }
.solution .longer math { font-size: .7em; }
.solution .result math { font-weight: 700; }
.live { border: 0; border-top: 1px solid var(--rule); border-bottom: 1px solid var(--rule); margin: 1.4rem 0 .6rem; padding: .5rem 0 .7rem; font: .85rem/1.4 system-ui, sans-serif; min-width: 0; }
.live legend { font-weight: 600; padding: 0 .6rem 0 0; }
.live div { display: grid; grid-template-columns: minmax(0, 1fr) 6.5rem 3.2rem 10rem; gap: .2rem .6rem; align-items: center; margin: .35rem 0; }
.live input, .live button { font: inherit; color: inherit; accent-color: var(--ink); }
.live input[type='text'] { width: 100%; padding: .2rem .4rem; border: 1px solid #767676; border-radius: 2px; background: var(--paper); text-align: right; font-variant-numeric: tabular-nums; }
.live input[type='range'] { width: 100%; margin: 0; min-height: 1.6rem; }
.live input[aria-invalid] { border: 2px solid var(--ink); }
.live button { padding: .25rem .7rem; border: 1px solid #767676; border-radius: 2px; background: var(--paper); cursor: pointer; }
.live :focus-visible { outline: 2px solid var(--ink); outline-offset: 2px; }
.live-status { min-height: 1.4em; margin: .5rem 0 0; }
.live-error { font-weight: 600; }
a { color: inherit; }
footer { margin-top: 3.5rem; border-top: 1px solid var(--rule); padding-top: .8rem; font: .82rem/1.45 system-ui, sans-serif; color: var(--soft); }
footer li { margin: .2rem 0; }
@media screen and (max-width: 1080px) {
  main { width: 42rem; margin: 0 auto; }
  caption { white-space: normal; }
  .scroll { overflow-x: auto; }
  aside { float: none; width: auto; margin: .8rem 0; border-left: 2px solid var(--rule); padding-left: .8rem; }
  aside.caution { border-left: 0; padding-left: 0; }
}
@media screen and (max-width: 700px) {
  .live div { grid-template-columns: minmax(0, 1fr) 3.2rem; margin: .7rem 0; }
  .live label, .live input[type='range'] { grid-column: 1 / -1; }
  .live input[type='text'], .live button { min-height: 2.4rem; }
  .solution li { grid-template-columns: minmax(0, 1fr); }
  .solution .note { text-align: left; }
}
@media screen and (max-width: 480px) {
  figure svg { width: calc(100% + 2.4rem); margin: 0 -1.2rem; }
}
@media print {
  @page { margin: 18mm 16mm; }
  html { font-size: 10.5pt; }
  .scroll { overflow: visible; max-width: 147%; }
  caption { white-space: normal; }
  body { padding: 0; max-width: none; }
  main { width: 68%; }
  aside { width: 13rem; margin-right: -14.5rem; }
  tr, li, figure, aside { break-inside: avoid; }
  h2, h3 { break-after: avoid; }
  thead { display: table-header-group; }
  details, .live { display: none; }
  a[href^='http']::after { content: ' (' attr(href) ')'; }
}
`

/** The hash of the style sheet, by which a content policy lets this sheet in and no other. A test compares. */
export const chapterStyleHash = 'sha256-MLkRvgbIp2pViz8CsQavehIOQy3/6hn1vsdSMsF6FMU='
