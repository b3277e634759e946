export { examinationJsonSchema } from './record-schema.js';
export { type Bundle, toBundle } from './bundle.js';
export { EXTENSIONS, SYSTEMS } from './codes.js';
export type { Unread } from './found.js';
export { type FromBundle, fromBundle, type ReadOptions } from './from-bundle.js';
export { BUNDLE_KINDS, type BundleKind, type BundleOptions, type FhirReference } from './options.js';
export { FHIR_VERSIONS, type FhirVersion } from './resource.js';
export { UNREAD_CODES, type UnreadCode } from '../statements/index.js';
export { unreadText } from './unread-text.js';
