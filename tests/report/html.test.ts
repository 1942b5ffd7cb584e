import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { escapeHtml, Html, html, inlineScript, jsonScript, unbroken } from "../../src/report/html/html.js";

describe("html", () => {
  it("escapes text, keeps markup, joins lists, leaves out what is not there", () => {
    const item = html`<li>${"<b>"}</li>`;
    expect(html`<ul title="${`"x'&`}">${[item, item]}${undefined}${false}${0}</ul>`.toString()).toBe(
      '<ul title="&quot;x&#39;&amp;"><li>&lt;b&gt;</li><li>&lt;b&gt;</li>0</ul>',
    );
    expect(html`${new Html("<i></i>")}`.toString()).toBe("<i></i>");
  });

  it("lets no text open a tag or leave an attribute", () => {
    fc.assert(fc.property(fc.string({ unit: "binary" }), (text) => !/[<>"']/.test(escapeHtml(text))));
  });
});

describe("jsonScript", () => {
  it("survives names that would end the script, and gives back what went in", () => {
    const data = { name: "</script><script>alert(1)</script><!-- \u2028\u2029", n: [1, null] };
    const markup = jsonScript(data).toString();
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
  expect(unbroken("above 253.0 V for 95 % of 12 weeks")).toBe("above 253.0\u00a0V for 95\u00a0% of 12 weeks");
});
