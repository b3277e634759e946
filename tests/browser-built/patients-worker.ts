// As a page's own worker file.
import 'pulse-map/flow/worker';
