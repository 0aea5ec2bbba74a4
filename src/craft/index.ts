export { CraftError } from './craft-error';
export {
  fillPattern,
  message,
  plainMessage,
  sentence,
  type Message,
  type Param,
  type Params,
} from './message';
export { lengthParam, messageOf, numberParam } from './message-parts';
export type {
  Ease,
  EdgeStep,
  EdgeStretch,
  Fabric,
  Gauge,
  Join,
  Order,
  Piece,
  Reading,
  Repeat,
  Row,
  Rule,
  Side,
  Stretch,
  TaperPlan,
} from './types';

// Numbers that are one kind, and rounding that is not led astray by floating point
export { cmPerInch, roundDown, roundNearest, roundUp, same, whole } from './rounding';
export { cm, perCm } from './numbers';

// Swatches
export { gaugeOf } from './gauge';
export { guessGauge } from './hook-guess';
export { measureWhileWorking } from './blocking';
export { hangingGrowth, lengthToWork, strainOf } from './hanging';
export { passes, stretchOf } from './stretch';

// Measurements and ease
export {
  bodyMeasures,
  chartNames,
  chartPoint,
  chartPoints,
  chartRange,
  charts,
  chartSource,
  type BodyMeasure,
  type Chart,
  type ChartName,
  type ChartPoint,
} from './charts';
export {
  bodySurvey,
  howSurveyed,
  surveyed,
  surveyedMeasures,
  surveyedPercentiles,
  surveyedSamples,
  surveySource,
  type HowSurveyed,
  type Sample,
  type Surveyed,
  type SurveyedMeasure,
  type SurveyedPercentile,
} from './body-survey';
export { finished, fitName } from './ease';
export { fitBands, type FitBand } from './fit-bands';
export { dropSleeveLength } from './drop-sleeve';
export { armholeDepthFor } from './armhole-depth';
export { frontWidth, neckWidth } from './bands';
export { seamedWidth, seamAllowance } from './seams';

// Repeats
export { fitCount } from './fit-count';
export { fitTogether, type FittedTogether, type HalfToFit } from './fit-together';
export { fitMotifs, type MotifFit } from './fit-motifs';
export { narrowMotifs } from './narrow-motifs';
export { foundationChain } from './foundation-chain';

// What a pattern prints for each size
export { nearestSize, ofSize } from './size-list';

// Shaping
export { gather } from './gather';
export { shapeEachRepeat } from './shape-each-repeat';
export { spaceEvenly } from './space-evenly';
export { taper, type Taper } from './taper';

// Edges
export { buttonholes } from './buttonholes';
export { armholeFit, joinArmhole } from './join-armhole';
export { checkJoins } from './joins';
export { pickUp } from './pick-up';
export { pickUpAgainstConvention, pickUpConventions, type EdgeFabric } from './pick-up-conventions';
export { pickUpEdge } from './pick-up-edge';
export { pickUpRatio } from './pick-up-ratio';
export { sidewaysRib } from './sideways-rib';

// Pieces
export { workPiece } from './work-piece';
export { edgeOf, shapedSide, type EdgeMeasured } from './edge-of';
export { areaOf, lengthOf, stitchesIn, widthAt } from './rows';

// Yarn, notions, time
export { notionsFor } from './notions';
export { timeFor } from './time';
export { poolYarn, yarnFor } from './yarn';
export { yarnWeights, yarnWeightsFor, yarnWeightsSource, type YarnWeight } from './yarn-weights';

// Give or take
export { chanceAbove, chanceWithin, t95 } from './student-t';
export { combineUncertainty, countUncertainty, widthUncertainty, type UncertaintyPart } from './uncertainty';
export { neighbourChance } from './neighbour-chance';
export { swatchToHalve, type Halving } from './swatch-to-halve';
export { withinLimits } from './within-limits';
export { formatNumber, greatest } from './format';
