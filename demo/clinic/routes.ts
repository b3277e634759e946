export type Route =
  | { readonly page: 'patients' }
  | { readonly page: 'patient'; readonly patientId: string }
  | { readonly page: 'visit'; readonly patientId: string; readonly visitId: string }
  | { readonly page: 'edit'; readonly patientId: string; readonly visitId?: string; readonly fromLast?: true }
  | { readonly page: 'about' }
  | {
      readonly page: 'lecture';
      readonly lessonId?: string;
      readonly presenter?: true;
      readonly handOut?: true;
    }
  | { readonly page: 'lecture-editor' }
  | { readonly page: 'practice'; readonly code?: string; readonly examiner?: true }
  | { readonly page: 'unknown' };

/** In the place of a lesson's id: the page where one is written. */
const EDITOR = 'write';
/** After a lesson's id: its hand-out. */
const HAND_OUT = 'hand-out';

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

/** The page that a location hash asks for. */
export function routeOf(hash: string): Route {
  const [first, patientId, second, visitId, last, ...more] = hash
    .replace(/^#\/?/, '')
    .split('/')
    .filter(Boolean)
    .map(decoded);
  if (first === undefined) return { page: 'patients' };
  if (first === 'about' && patientId === undefined) return { page: 'about' };
  if (first === 'lecture' && visitId === undefined) {
    if (patientId === undefined) return { page: 'lecture' };
    if (patientId === EDITOR && second === undefined) return { page: 'lecture-editor' };
    if (second === undefined) return { page: 'lecture', lessonId: patientId };
    if (second === HAND_OUT) return { page: 'lecture', lessonId: patientId, handOut: true };
    if (second === 'presenter') return { page: 'lecture', lessonId: patientId, presenter: true };
  }
  if (first === 'practice' && visitId === undefined) {
    if (patientId === undefined) return { page: 'practice' };
    if (second === undefined) return { page: 'practice', code: patientId };
    if (second === 'examiner') return { page: 'practice', code: patientId, examiner: true };
  }
  if (first !== 'patients' || more.length) return { page: 'unknown' };
  if (patientId === undefined) return { page: 'patients' };
  if (second === undefined) return { page: 'patient', patientId };
  if (second !== 'visits' || visitId === undefined) return { page: 'unknown' };
  if (visitId === 'new') {
    if (last === 'from-last') return { page: 'edit', patientId, fromLast: true };
    return last === undefined ? { page: 'edit', patientId } : { page: 'unknown' };
  }
  if (last === undefined) return { page: 'visit', patientId, visitId };
  return last === 'edit' ? { page: 'edit', patientId, visitId } : { page: 'unknown' };
}

/** The hash that asks for a page. */
export function hashOf(route: Route): string {
  switch (route.page) {
    case 'about':
      return '#/about';
    case 'lecture':
      return `#/lecture${route.lessonId === undefined ? '' : `/${encodeURIComponent(route.lessonId)}`}${route.presenter ? '/presenter' : route.handOut ? `/${HAND_OUT}` : ''}`;
    case 'lecture-editor':
      return `#/lecture/${EDITOR}`;
    case 'practice':
      return `#/practice${route.code === undefined ? '' : `/${encodeURIComponent(route.code)}`}${route.examiner ? '/examiner' : ''}`;
    case 'patient':
      return `#/patients/${encodeURIComponent(route.patientId)}`;
    case 'visit':
      return `${hashOf({ page: 'patient', patientId: route.patientId })}/visits/${encodeURIComponent(route.visitId)}`;
    case 'edit':
      return route.visitId
        ? `${hashOf({ page: 'visit', patientId: route.patientId, visitId: route.visitId })}/edit`
        : `${hashOf({ page: 'patient', patientId: route.patientId })}/visits/new${route.fromLast ? '/from-last' : ''}`;
    default:
      return '#/';
  }
}
