export type { WhatIfsTold } from './background-what-ifs';
export { SheetClient } from './client';
