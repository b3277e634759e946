// A clinic's own record, as it might have been before: the one line that concerns the package is the next.
import 'pulse-map';
import './clinic/app.js';
