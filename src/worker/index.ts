export type { WhatIfEvents } from './background-what-ifs';
export { SheetClient } from './client';
