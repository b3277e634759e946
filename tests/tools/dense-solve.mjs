// The general linear-algebra library that our elimination is checked against. Development only.
import { LuDecomposition, Matrix } from 'ml-matrix';

/**
 * Solves A x = b by dense LU.
 * @param {number[][]} rows
 * @param {number[]} right
 * @returns {number[]}
 */
export function denseSolve(rows, right) {
  return new LuDecomposition(new Matrix(rows)).solve(Matrix.columnVector(right)).to1DArray();
}
