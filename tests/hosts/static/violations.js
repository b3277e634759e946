/** What the page's policy refused, for the test. */
globalThis.violations = [];
document.addEventListener('securitypolicyviolation', ({ effectiveDirective, sourceFile }) =>
  globalThis.violations.push(`${effectiveDirective} ${sourceFile}`),
);
