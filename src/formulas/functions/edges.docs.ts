import type { edges as signature } from './edges.signature';
import type { DocsOf } from './function-docs';

export const edges: DocsOf<typeof signature> = {
  PICKUPSTITCHES: {
    about: 'How many stitches to pick up along every PICKUPROWS row ends, so that neither fabric puckers.',
    example: 'PICKUPSTITCHES(body_rows; sleeve_fabric_sts)',
  },
  PICKUPROWS: {
    about: 'The row ends along which PICKUPSTITCHES stitches are picked up.',
    example: 'PICKUPROWS(body_rows; sleeve_fabric_sts)',
  },
  PICKUPOFF: {
    about:
      'How far the ratio of PICKUPSTITCHES and PICKUPROWS is from the exact one, as a share: 0.02 is 2% too many stitches.',
    example: 'PICKUPOFF(body_rows; sleeve_fabric_sts)',
  },
  PICKUPCONVENTION: {
    about:
      'How far the ratio in common use for a fabric (US terms) is from the one its gauges ask for: 0.05 is 5% too many, which flares.',
    example: 'PICKUPCONVENTION("single crochet"; body_rows; sleeve_fabric_sts)',
  },
  PICKUP: {
    about:
      'How to pick up an exact number of stitches along so many row ends: "3 of 4 × 2, 4 of 5" skips the last row end of each 4, and of 5.',
    example: 'PICKUP(ROWS(13); STS(10))',
  },
  EDGEROWS: {
    about: 'A stretch of an edge made of row ends.',
    example: 'EDGEROWS(back_rows; STS(3); ROWS(4))',
  },
  EDGESTITCHES: {
    about: 'A stretch of an edge made of the tops of stitches, picked up one for one.',
    example: 'EDGESTITCHES(STS(25))',
  },
  EDGEMOTIFS: {
    about: 'A stretch of an edge made of motifs, or of chains, that take so many stitches each.',
    example: 'EDGEMOTIFS(6; STS(9))',
  },
  EDGECURVE: {
    about: 'A stretch of an edge that curves, picked up by its length.',
    example: 'EDGECURVE(CM(18); body_sts)',
  },
  PICKUPEDGE: {
    about: 'The stitches picked up along an edge of several stretches, fitted to the repeat of its band.',
    example: 'PICKUPEDGE(4; 2; "nearest"; EDGEROWS(ROWS(30); STS(3); ROWS(4)); EDGESTITCHES(STS(25)))',
  },
  PICKUPUNFITTED: {
    about: 'The exact stitches that an edge of several stretches takes, before they are fitted to a repeat.',
    example: 'PICKUPUNFITTED(EDGEROWS(ROWS(30); STS(3); ROWS(4)); EDGESTITCHES(STS(25)))',
  },
  PICKUPSHARE: {
    about: 'The stitches that one stretch of the edge has in PICKUPEDGE, the first being 1.',
    example: 'PICKUPSHARE(1; 4; 2; "nearest"; EDGEROWS(ROWS(30); STS(3); ROWS(4)); EDGESTITCHES(STS(25)))',
  },
  SIDEWAYSRIB: {
    about: 'The rows of a rib worked sideways along an edge, an even number of them.',
    example: 'SIDEWAYSRIB(finished_bust; body_rows)',
  },
  BUTTONHOLES: {
    about: 'The stitch, or the row, at which each buttonhole of a band begins, spaced evenly.',
    example: 'BUTTONHOLES(STS(80); STS(3); 5; STS(3))',
  },
  JOINARMHOLE: {
    about:
      'Stitches picked up round an armhole: both sides at the ratio, the underarm, and what a seam will take.',
    example: 'JOINARMHOLE(ROWS(48); STS(2); ROWS(3); STS(10); STS(2))',
  },
  ARMHOLEFIT: {
    about:
      'How much wider a sleeve is than the armhole it joins, as a share: beyond 8% it flares, below −8% it puckers.',
    example: 'ARMHOLEFIT(sleeve_sts; sleeve_fabric_sts; 2 * armhole)',
  },
  JOINS: {
    about: 'Whether sides that are joined match stitch for stitch, or row for row.',
    example: 'JOINS(back_sts; STS(20) + STS(27) + STS(20))',
  },
};
