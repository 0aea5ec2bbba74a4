/**
 * A scenario of our own: an invented pattern, as a maker has it on paper. A pullover knit flat from the hem, sleeves
 * picked up along the armholes and worked down to their cuffs. Every number is invented.
 */
export const heronPullover = `Heron pullover

Sizes: XS (S, M, L, XL, 2X, 3X, 4X, 5X)
To fit bust: 76 (84, 94, 104, 114, 125, 134, 145, 155) cm

Finished measurements
Bust: 89 (96.5, 103.5, 114.5, 125.5, 136.5, 143.5, 154.5, 165.5) cm
Length: 54.5 (56, 57.5, 59.5, 60.5, 62.5, 63.5, 64.5, 66) cm
Upper arm: 38 (39, 43.5, 46.5, 51, 53.5, 57.5, 58, 62.5) cm
Sleeve length: 44 cm

Gauge: 22 sts and 30 rows = 10 cm in stockinette on 4 mm needles
Yarn: light weight, 300 (350, 350, 400, 450, 500, 500, 550, 600) g

Back
Cast on 98 (106, 114, 126, 138, 150, 158, 170, 182) sts: a multiple of 4 plus 2.
Work in k2, p2 rib for 18 rows.
Work in stockinette for 96 (98, 98, 100, 100, 102, 102, 104, 104) rows.
Armholes
Bind off 4 (4, 6, 6, 8, 8, 10, 10, 12) sts at the beginning of the next 2 rows [90 (98, 102, 114, 122, 134, 138, 150, 158) sts].
Work 48 (50, 54, 58, 62, 66, 68, 70, 74) rows even.
Bind off: 26 (29, 31, 36, 40, 45, 47, 52, 56) sts for each shoulder and the 38 (40, 40, 42, 42, 44, 44, 46, 46) sts of the neck between them.

Front
Cast on 98 (106, 114, 126, 138, 150, 158, 170, 182) sts: a multiple of 4 plus 2.
Work in k2, p2 rib for 18 rows.
Work in stockinette for 96 (98, 98, 100, 100, 102, 102, 104, 104) rows.
Armholes
Bind off 4 (4, 6, 6, 8, 8, 10, 10, 12) sts at the beginning of the next 2 rows [90 (98, 102, 114, 122, 134, 138, 150, 158) sts].
Work 28 (30, 34, 38, 42, 46, 48, 50, 54) rows even.
Neck
Work 36 (39, 41, 46, 50, 55, 57, 62, 66) sts, place the center 18 (20, 20, 22, 22, 24, 24, 26, 26) sts on a holder, and leave the last sts for the other side.

Front shoulder (make 2)
On the held 36 (39, 41, 46, 50, 55, 57, 62, 66) sts of the front.
Dec 1 st at the neck edge of every row 4 times, then of every 2nd row 6 times [26 (29, 31, 36, 40, 45, 47, 52, 56) sts].
Work 4 rows even.
Bind off all 26 (29, 31, 36, 40, 45, 47, 52, 56) sts.

Sleeves (make 2)
Pick up and knit 3 sts for every 4 rows along the sides of the armhole, and 1 st in each bound-off st of the underarm [84 (86, 96, 102, 112, 118, 126, 128, 138) sts].
Work 2 rows even in stockinette.
Dec 1 st at each end of every 6th (6th, 6th, 6th, 4th, 4th, 4th, 4th, 4th) row 17 (15, 9, 3, 26, 23, 21, 20, 17) times, then of every 4th (4th, 4th, 4th, 2nd, 2nd, 2nd, 2nd, 2nd) row 2 (5, 14, 23, 3, 9, 13, 15, 21) times [46 (46, 50, 50, 54, 54, 58, 58, 62) sts].
Work 1 row even.
Cuff
Work in k2, p2 rib for 18 rows.
Bind off all sts.

Finishing
Sew the shoulders before the sleeves are picked up, then the side and sleeve seams.
`;
