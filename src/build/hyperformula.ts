import type { Plugin } from 'vite';

/**
 * Leaves out of the build the descriptions of functions that HyperFormula brings for those who list them in English:
 * a tenth of all that is loaded, and the page has sentences of its own. Each becomes an empty list.
 */
export function withoutDescriptions(): Plugin {
  return {
    name: 'without descriptions',
    apply: 'build',
    transform(code, id) {
      if (!/hyperformula\/es\/interpreter\/functionMetadata\/categories\//.test(id)) return undefined;
      const names = [...code.matchAll(/^export const (\w+) = /gm)].map(([, name]) => name);
      if (names.length === 0) this.error(`${id} is not what it was: look whether it still can be left out.`);
      return { code: names.map((name) => `export const ${name} = {};`).join('\n'), map: null };
    },
  };
}

/** How many addresses there are in the sentences that HyperFormula has for licence keys that are bought. */
const addresses = 6;

/**
 * Takes the addresses of HyperFormula's sales out of the build. They stand in sentences about licence keys that are
 * bought, which never show here: the page uses it under the GPL.
 */
export function withoutSalesAddresses(): Plugin {
  return {
    name: 'without sales addresses',
    apply: 'build',
    transform(code, id) {
      if (!/hyperformula\/es\/helpers\/licenseKeyValidator\.mjs/.test(id)) return undefined;
      const parts = code.split(/\b[\w.]+@handsontable\.com\b/);
      if (parts.length !== addresses + 1)
        this.error(
          `${id} is not what it was: it should have ${addresses} addresses and has ${parts.length - 1}.`,
        );
      return { code: parts.join('its makers'), map: null };
    },
  };
}
