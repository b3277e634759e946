import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination, setFields } from '../../../src/examination/index.js';
import { hold, type Reader } from '../../../src/elements/common/record-value.js';
import { type RecordChangeEvent, RecordStore } from '../../../src/elements/common/record-store.js';

const by = (examiner: string | undefined): Examination => setFields(emptyExamination(), { examiner });
const later = '{"format":"pulse-map/2"}';
const refuse: Reader<Examination> = () => ({ ok: false, faults: [] }) as never;

function watched(store = new RecordStore(emptyExamination())) {
  const told: string[] = [];
  store.addEventListener('record-change', (event) =>
    told.push((event as RecordChangeEvent).tells.join('+') || 'code'),
  );
  return { store, told };
}

describe('a record store', () => {
  it('makes what is typed in one field one step, told by input at each key and by change at the end', () => {
    const { store, told } = watched();
    for (const typed of ['A', 'Ad', 'Ada']) store.commit(by(typed), 'examiner');
    expect(told).toEqual(['input', 'input', 'input']);
    expect(store.settle()).toBe(true);
    expect(store.settle()).toBe(false);
    expect(told.at(-1)).toBe('change');
    expect(told).toHaveLength(4);
    store.undo();
    expect(store.examination.examiner).toBeUndefined();
    expect(store.canUndo).toBe(false);
    store.redo();
    expect(store.examination.examiner).toBe('Ada');
  });

  it('begins another step with another field, another visit, another act', () => {
    const { store, told } = watched();
    store.commit(by('A'), 'one');
    store.commit(by('AB'), 'two');
    store.commit(by('ABC'));
    store.commit(by('ABCD'), 'two');
    store.settle();
    store.commit(by('ABCDE'), 'two');
    const seen: unknown[] = [];
    while (store.undo()) seen.push(store.examination.examiner);
    expect(seen).toEqual(['ABCD', 'ABC', 'AB', 'A', undefined]);
    expect(told.slice(0, 5)).toEqual(['input', 'change', 'input', 'change', 'input+change']);
  });

  it('leaves no step, and no undone step lost, where a person types back what stood there', () => {
    const { store } = watched();
    store.commit(by('Ada'));
    store.commit(by('Bea'));
    store.undo();
    store.commit(by('Adam'), 'field');
    store.commit(by('Ada'), 'field');
    expect(store.settle()).toBe(false);
    expect(store.canRedo).toBe(true);
    store.redo();
    expect(store.examination.examiner).toBe('Bea');
  });

  it('takes back and forth any run of typing and acts exactly', () => {
    const step = fc.tuple(fc.constantFrom('a', 'b', undefined), fc.constantFrom('x', 'y', 'z', undefined));
    fc.assert(
      fc.property(fc.array(step, { maxLength: 12 }), (steps) => {
        const { store } = watched();
        for (const [field, examiner] of steps) store.commit(by(examiner), field);
        store.settle();
        const last = JSON.stringify(store.examination);
        let back = 0;
        while (store.undo()) back++;
        expect(JSON.stringify(store.examination)).toBe(JSON.stringify(emptyExamination()));
        expect(back).toBeLessThanOrEqual(steps.length);
        while (store.redo()) back--;
        expect([back, JSON.stringify(store.examination)]).toEqual([0, last]);
      }),
    );
  });

  it('takes no edit while what was given is not read, and keeps its text', () => {
    const { store, told } = watched();
    store.commit(by('Ada'));
    for (const reader of [refuse, undefined]) {
      store.take(hold(later, emptyExamination(), reader));
      told.length = 0;
      expect(store.commit(by('Bea'))).toBe(false);
      expect(store.commit(by('Bea'), 'field')).toBe(false);
      expect([store.undo(), store.redo(), store.canUndo]).toEqual([false, false, false]);
      expect(store.text).toBe(later);
      expect(store.examination, 'nothing of the record before').toEqual(emptyExamination());
      expect(told).toEqual([]);
    }
  });

  it('starts a new record in place of a sealed one as one step that undo takes back', () => {
    const { store, told } = watched();
    expect(store.startNew(), 'nothing is sealed').toBe(false);
    store.take(hold(later, emptyExamination(), refuse));
    expect(store.startNew()).toBe(true);
    expect([store.text, store.held.state]).toEqual(['', 'readable']);
    expect(told).toEqual(['code', 'input+change']);
    store.commit(by('Ada'));
    store.undo();
    store.undo();
    expect([store.text, store.held.state]).toEqual([later, 'sealed']);
  });

  it('starts nothing new over a value that still waits', () => {
    const { store } = watched();
    store.take(hold(later, emptyExamination(), undefined));
    expect(store.startNew()).toBe(false);
    store.read(refuse);
    expect([store.text, store.held.state]).toEqual([later, 'sealed']);
  });
});
