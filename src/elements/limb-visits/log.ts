import { SIDES, type Side } from '../../anatomy/index.js';
import {
  armPressure,
  type ChangedPlace,
  changedPlaces,
  type PatientVisit,
  timeOf,
  TREND_MEASURES,
  type TrendMeasure,
  type TrendValue,
  trendValue,
  trendValues,
} from '../../comparison/index.js';
import {
  emptyExamination,
  type Examination,
  isInError,
  parseExamination,
  parseExaminationText,
} from '../../examination/index.js';
import { alreadyRead } from '../common/given-record.js';

/** Records and changes kept at hand; of all others only the numbers of their lines are. */
const KEPT = 64;

/** A map that forgets what was used longest ago. */
class Recent<T> {
  readonly #kept = new Map<number, T>();

  constructor(private readonly most: number) {}

  get(key: number, make: () => T): T {
    const known = this.#kept.has(key) ? (this.#kept.get(key) as T) : make();
    this.#kept.delete(key);
    this.#kept.set(key, known);
    if (this.#kept.size > this.most) this.#kept.delete(this.#kept.keys().next().value as number);
    return known;
  }

  has(key: number): boolean {
    return this.#kept.has(key);
  }
}

const BLANK = alreadyRead(emptyExamination());

/** A record as a host keeps it; `undefined` where this version cannot read it. */
function recordFrom(input: PatientVisit['examination']): Examination | undefined {
  if (input === null || input === undefined || input === '') return BLANK;
  const parsed = typeof input === 'string' ? parseExaminationText(input) : parseExamination(input);
  return parsed.ok ? alreadyRead(parsed.value) : undefined;
}

/** Whether a record says so of itself. Of ten thousand records hardly one does, and no other is read for it. */
function saysInError({ examination }: PatientVisit): boolean {
  const mayBe =
    typeof examination === 'string'
      ? examination.includes('entered-in-error')
      : Array.isArray(examination?.amendments);
  const record = mayBe ? recordFrom(examination) : undefined;
  return record !== undefined && isInError(record);
}

type Columns = Record<TrendMeasure, Record<Side, Float64Array>>;

/**
 * What the visits of a patient tell, read when it is asked for or in portions: a few records are kept, and of every visit the numbers
 * that lines are drawn of.
 */
export class VisitLog {
  readonly times: Float64Array;
  /** Visits whose numbers are read. */
  done = 0;
  readonly #records = new Recent<Examination | undefined>(KEPT);
  readonly #changes = new Recent<readonly ChangedPlace[] | undefined>(KEPT);
  readonly #columns: Columns;
  readonly #struck: Uint8Array;
  readonly #measured = new Set<TrendMeasure>();

  /** @param visits in their order */
  constructor(readonly visits: readonly PatientVisit[]) {
    const column = (): Float64Array => new Float64Array(visits.length).fill(NaN);
    this.times = Float64Array.from(visits, ({ at }) => timeOf(at));
    this.#struck = Uint8Array.from(visits, (visit) => (visit.enteredInError || saysInError(visit) ? 1 : 0));
    this.#columns = Object.fromEntries(
      TREND_MEASURES.map((measure) => [measure, { right: column(), left: column() }]),
    ) as Columns;
  }

  /** The measures that any visit read so far knows, in their order. */
  get measures(): readonly TrendMeasure[] {
    return TREND_MEASURES.filter((measure) => this.#measured.has(measure));
  }

  /** Whether a visit counts: not one that the page, or the record itself, says was entered in error. */
  readonly counts = (at: number): boolean => this.#struck[at] === 0;

  record(at: number): Examination | undefined {
    return this.#records.get(at, () => recordFrom(this.visits[at]!.examination));
  }

  /** The visit before that counts. */
  before(at: number): number | undefined {
    for (let one = at - 1; one >= 0; one--) if (this.counts(one)) return one;
    return undefined;
  }

  /** Where the sites changed since the visit before; `undefined` where there is nothing to compare. */
  changes(at: number): readonly ChangedPlace[] | undefined {
    return this.#changes.get(at, () => {
      const before = this.counts(at) ? this.before(at) : undefined;
      const [old, now] = [before === undefined ? undefined : this.record(before), this.record(at)];
      return old && now ? changedPlaces(old, now) : undefined;
    });
  }

  hasRecord(at: number): boolean {
    return this.#records.has(at);
  }

  /** A value as it was read for the lines, or from the record where that is still to come. */
  value(measure: TrendMeasure, side: Side, at: number): TrendValue {
    if (at < this.visits.length - this.done) {
      const record = this.record(at);
      return record && trendValue(record, measure, side);
    }
    const known = this.#columns[measure][side][at]!;
    if (known === Infinity) return 'incompressible';
    return Number.isNaN(known) ? undefined : known;
  }

  sides(measure: TrendMeasure, at: number): Partial<Record<Side, TrendValue>> {
    return Object.fromEntries(SIDES.map((side) => [side, this.value(measure, side, at)]));
  }

  column(measure: TrendMeasure): Readonly<Record<Side, Float64Array>> {
    return this.#columns[measure];
  }

  /** The arm pressure of a visit in mmHg. */
  arm(at: number): number | undefined {
    const record = this.record(at);
    return record && armPressure(record);
  }

  /** Reads the numbers of the next visit, the latest first; false when all are read. */
  readNext(): boolean {
    const at = this.visits.length - 1 - this.done;
    if (at < 0) return false;
    this.done++;
    // Not by way of the kept records, which would forget what is in sight.
    const record = this.#records.has(at) ? this.record(at) : recordFrom(this.visits[at]!.examination);
    if (!record) return true;
    const values = trendValues(record);
    for (const measure of TREND_MEASURES)
      for (const side of SIDES) {
        const value = values[measure][side];
        if (value === undefined) continue;
        if (this.counts(at)) this.#measured.add(measure);
        this.#columns[measure][side][at] = value === 'incompressible' ? Infinity : value;
      }
    return true;
  }
}
