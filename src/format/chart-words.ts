import type { BodyMeasure, ChartName, ChartPoint } from '../craft';

/** What the body charts call themselves and what they measure, as people read it. */
export const chartLabels: Readonly<Record<ChartName, string>> = {
  woman: 'Women',
  man: 'Men',
  child: 'Children',
  baby: 'Babies',
};

export const measureLabels: Readonly<Record<BodyMeasure, string>> = {
  bust: 'Bust or chest',
  neckToWrist: 'Back of neck to wrist',
  backWaistLength: 'Back waist length',
  crossBack: 'Cross back',
  armLengthToUnderarm: 'Arm length to underarm',
  upperArm: 'Upper arm',
  armholeDepth: 'Armhole depth',
  waist: 'Waist',
  hips: 'Hips',
};

export const pointLabels: Readonly<Record<ChartPoint, string>> = {
  lower: 'Lower end of the chart’s range',
  middle: 'Middle of the range',
  upper: 'Upper end of the range',
};
