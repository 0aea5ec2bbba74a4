/*
 * What the tests of colours measure with. Colours are "#rrggbb".
 *
 * - sRGB transfer function and luminance: IEC 61966-2-1; relative luminance and contrast ratio as WCAG 2.2 defines them.
 * - Dichromats: the matrices of G. M. Machado, M. M. Oliveira and L. A. F. Fernandes, "A physiologically-based model
 *   for simulation of color vision deficiency", IEEE TVCG 15(6), 2009, severity 1.0, for linear RGB (from memory; their
 *   rows sum to 1, which a test checks).
 * - Difference of colours: CIE 1976 L*a*b* (CIE 15), D65, Euclidean.
 */
export type Triple = readonly [number, number, number];

export const dichromats: Readonly<Record<string, readonly [Triple, Triple, Triple]>> = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

export function linear(hex: string): Triple {
  const channel = (from: number) => {
    const value = parseInt(hex.slice(from, from + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}

export function contrast(a: string, b: string): number {
  const luminance = (hex: string) => dot([0.2126, 0.7152, 0.0722], linear(hex));
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

export function seenBy(matrix: readonly Triple[] | null, rgb: Triple): Triple {
  if (!matrix) return rgb;
  return matrix.map((row) => Math.min(1, Math.max(0, dot(row, rgb)))) as unknown as Triple;
}

export function difference(a: Triple, b: Triple): number {
  const [p, q] = [lab(a), lab(b)];
  return Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
}

function dot(a: Triple, b: Triple): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

function lab(rgb: Triple): Triple {
  const rows: Triple[] = [
    [0.4124564, 0.3575761, 0.1804375],
    [0.2126729, 0.7151522, 0.072175],
    [0.0193339, 0.119192, 0.9503041],
  ];
  const [x, y, z] = rows.map((row) => {
    const t = dot(row, rgb) / (row[0] + row[1] + row[2]);
    return t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116;
  }) as [number, number, number];
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}
