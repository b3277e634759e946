import type * as z from 'zod/mini';
import { type Method, METHODS } from '../types/method.js';
import { object } from './common.js';
import { oneOf } from './measures.js';

export const methodSchema: z.ZodMiniType<Method> = object<Method>({
  standard: oneOf(METHODS.standard),
  ankle: oneOf(METHODS.ankle),
  arm: oneOf(METHODS.arm),
  incompressible: oneOf(METHODS.incompressible),
  severeIndex: oneOf(METHODS.severeIndex),
  toe: oneOf(METHODS.toe),
  wrist: oneOf(METHODS.wrist),
  finger: oneOf(METHODS.finger),
  armDifference: oneOf(METHODS.armDifference),
  wristDifference: oneOf(METHODS.wristDifference),
  armDrop: oneOf(METHODS.armDrop),
  drop: oneOf(METHODS.drop),
  sideDifference: oneOf(METHODS.sideDifference),
  exercise: oneOf(METHODS.exercise),
  threat: oneOf(METHODS.threat),
});
