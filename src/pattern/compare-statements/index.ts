export { compareStatements, type Compared, type ReadPart, type ReadPattern } from './compare';
