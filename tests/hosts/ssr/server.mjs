// Renders the page as a server does, on Node, and prints it.
// snippet ssr
import { render } from '@lit-labs/ssr';
import { collectResult } from '@lit-labs/ssr/lib/render-result.js';
import { html } from 'lit';
import 'pulse-map';

const visit = (record) => html`
  <form>
    <label for="pulses">Pulses</label>
    <pulse-map id="pulses" name="pulses" lang="en" value=${record}></pulse-map>
    <!-- snippet hide -->
    <button>Save</button>
    <button type="reset">Reset</button>
    <button type="button" id="load">Last visit</button>
    <output id="state"></output>
    <!-- snippet show -->
  </form>
`;

const body = await collectResult(render(visit('')));
// snippet end

process.stdout.write(`<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <title>A page rendered by a server</title>
  </head>
  <body>
    ${body}
    <script type="module" src="./main.ts"></script>
  </body>
</html>
`);
