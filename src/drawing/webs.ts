/**
 * The webs that round the forks of the arteries, as path data in tenths of a figure unit, by vessel. Finding where a branch leaves its
 * stem takes longer than all else of a first drawing, so it is done beforehand: tests/unit/drawing/webs.test.ts draws them from the
 * courses and widths, compares, and with `vitest -u` writes this file.
 */
// prettier-ignore
export const WEBS: Readonly<Record<string, string>> = {
  'right brachiocephalic': 'M5968 3059c-50 26-100 11-149-43l-66 58l73 83l131 64l54-24zM5687 3132c49 56 51 123 8 200l138 50l39-79l-46-146l-73-83z',
  'right common-carotid': 'M5819 3016c-47-31-79-74-96-131l-68 19l25 86l18 21l55 63zM5525 2588c13 104-22 122-107 53l-32 58l120 88l106-57l-21-147z',
  'left common-carotid': 'M6276 3118c-51-10-66-42-43-97l-65-27l-35 82l21 127l52 26z',
  'right internal-carotid': 'M5659 1639c-30 109-60 112-91 8l-45 16l65 160l78-4l45-169z',
  'left internal-carotid': 'M6432 1647c-30 103-61 101-91-8l-53 11l48 169l76 4l65-160z',
  'left subclavian': 'M6434 3303c-34-30-39-73-16-129l-66-28l-36 82l-26 80l29 50zM6310 3063c-25 54-61 59-110 16l-46 124l52 26l134-56l35-82z',
  'right radial': 'M2985 5124c72-36 90-19 54 53l33 12l42-113l-38-38l-106 54z',
  'left radial': 'M8961 5177c-36-72-18-89 54-53l15-32l-106-54l-38 38l42 113z',
  'left renal': 'M6127 5448c0-45 18-71 55-78l-8-52l-57 10l-75 51l-8 59zM6225 5258c-60 9-73-22-41-93l-94-25l-25 104l80 79l86-13z',
  'right common-iliac': 'M5919 5878c12 58 4 114-24 165l62 35l43-78l1-30l4-88z',
  'left common-iliac': 'M6105 6043c-28-51-33-104-14-157l-86-4l-4 88l-1 30l43 78z',
  'right internal-iliac': 'M5537 6942c54-143 91-134 111 28l51-16l-27-229l-97-20l-92 214zM5721 6555c9-47 18-74 26-83l-51-32l-15 25l3 1l-16 86z',
  'left internal-iliac': 'M6253 6472c8 9 17 36 26 83l53-3l-16-86l3-1l-15-25zM6352 6970c20-162 57-171 111-28l54-23l-92-214l-97 20l-27 229z',
  'right deep-femoral': 'M5273 7577c4 11-1 32-16 64l40 22l25-54l6 1l2-30zM5188 7908c53-79 78-71 75 27l57 0l2-148l-91-25l-82 124z',
  'left deep-femoral': 'M6737 7935c-3-98 22-106 75-27l39-22l-82-124l-91 25l2 148zM6743 7641c-15-32-20-53-16-64l-57 3l2 30l6-1l25 54z',
  'right anterior-tibial': 'M4858 10616c37-47 56-37 58 29l47-3l-11-111l-64-5l-55 71z',
  'left anterior-tibial': 'M7084 10645c2-66 21-76 58-29l25-19l-55-71l-64 5l-11 111z',
  'right peroneal': 'M4944 10990c32-75 58-75 76 0l30-13l-45-111l-41 1l-48 110z',
  'left peroneal': 'M6980 10990c18-75 44-75 76 0l28-13l-48-110l-41-1l-45 111z',
};
