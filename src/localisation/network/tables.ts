import { causeTables } from './cause-tables.js';
import { findingTables } from './finding-tables.js';
import type { Tables } from './types.js';

/** Every figure of the network, each beside the short name of its source (`SOURCES`). */
export const TABLES: Tables = { ...causeTables, ...findingTables };
