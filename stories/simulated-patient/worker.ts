// What a page's own worker file looks like.
import 'pulse-map/flow/worker';
