import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { escapeHtml, html, inlineScript, jsonScript, keptTogether, raw, unbroken } from "../../src/report/html/html.js";
import { ENGLISH, type Language } from "../../src/report/languages/language.js";
import { Numeral, say } from "../../src/sentence.js";

describe("html", () => {
  it("escapes text, keeps markup, joins lists, leaves out what is not there", () => {
    const item = html`<li>${"<b>"}</li>`;
    expect(html`<ul title="${`"x'&`}">${[item, item]}${undefined}${false}${0}</ul>`.markup(ENGLISH)).toBe(
      '<ul title="&quot;x&#39;&amp;"><li>&lt;b&gt;</li><li>&lt;b&gt;</li>0</ul>',
    );
    expect(html`${raw("<i></i>")}`.markup(ENGLISH)).toBe("<i></i>");
  });

  it("lets no text open a tag or leave an attribute", () => {
    fc.assert(fc.property(fc.string({ unit: "binary" }), (text) => !/[<>"']/.test(escapeHtml(text))));
  });
});

it("texts inside markup wait for the language", () => {
  const german: Language = {
    id: "de",
    name: "Deutsch",
    decimalMark: ",",
    phrases: { "{1} lay above <{2}>": "über <{2}>: {1}" },
  };
  const item = html`<i title="${say`${2} lay above <${new Numeral("253.0")}>`}">${unbroken(say`${new Numeral("6.5")} V`)}</i>`;
  expect(html`${[item]}`.markup(german)).toBe('<i title="über &lt;253,0&gt;: 2">6,5\u00a0V</i>');
  expect(html`${[item]}`.markup(ENGLISH)).toBe('<i title="2 lay above &lt;253.0&gt;">6.5\u00a0V</i>');
});

describe("jsonScript", () => {
  it("survives names that would end the script, and gives back what went in", () => {
    const data = { name: "</script><script>alert(1)</script><!-- \u2028\u2029", n: [1, null] };
    const markup = jsonScript(data).markup(ENGLISH);
    expect(markup.match(/<\/script/gi)).toHaveLength(1);
    expect(markup).not.toMatch(/<!--|[\u2028\u2029]/);
    expect(JSON.parse(markup.replace(/^<script[^>]*>/, "").replace(/<\/script>$/, ""))).toEqual(data);
  });
});

describe("inlineScript", () => {
  it("cannot end its element, and the texts in it keep their value", () => {
    const script = inlineScript('const a = "</script>"; const b = "<!--"; a + b');
    expect(script).not.toMatch(/<\/script|<!--/i);
    expect(new Function(script.replace(/; a \+ b$/, "; return a + b"))()).toBe("</script><!--");
  });
});

it("unbroken keeps a number and its unit together and changes nothing else", () => {
  expect(keptTogether("above 253.0 V for 95 % of 12 weeks")).toBe("above 253.0\u00a0V for 95\u00a0% of 12 weeks");
});
