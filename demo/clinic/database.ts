import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { PATIENTS, VISITS } from './samples.js';
import type { Draft, Patient, Visit } from './types.js';

interface Tables extends DBSchema {
  patients: { key: string; value: Patient };
  visits: { key: string; value: Visit; indexes: { patient: string } };
  drafts: { key: string; value: Draft };
}

const VERSION = 1;

async function connect(name: string): Promise<IDBPDatabase<Tables>> {
  const database = await openDB<Tables>(name, VERSION, {
    async upgrade(made, _from, _to, transaction) {
      made.createObjectStore('patients', { keyPath: 'id' });
      made.createObjectStore('visits', { keyPath: 'id' }).createIndex('patient', 'patientId');
      made.createObjectStore('drafts', { keyPath: 'key' });
      await Promise.all([
        ...PATIENTS.map((patient) => transaction.objectStore('patients').put(patient)),
        ...VISITS.map((visit) => transaction.objectStore('visits').put(visit)),
      ]);
    },
    // A later version of this page in another tab may go ahead; this one then says that the database is gone.
    blocking: () => database.close(),
  });
  return database;
}

/** A visit was saved or deleted elsewhere since it was read here: nothing was written. */
export class VisitChangedError extends Error {
  /** @param kept the visit as it is kept now; nothing where it was deleted */
  constructor(readonly kept: Visit | undefined) {
    super(kept ? 'it was changed elsewhere' : 'it was deleted elsewhere');
  }
}

/** A visit that was kept before revisions were counted has the first of them. */
const counted = (visit: Visit): Visit & { readonly revision: number } => ({ revision: 0, ...visit });

/** Refuses to go on from a visit other than the one kept. */
async function unchanged(
  visits: { get(id: string): Promise<Visit | undefined> },
  { id, revision }: Visit,
): Promise<void> {
  const kept = await visits.get(id);
  if ((kept && counted(kept).revision) !== revision) throw new VisitChangedError(kept && counted(kept));
}

/** Everything the clinic keeps, in the browser's own database. Nothing leaves this machine. */
export class ClinicStore {
  #database: IDBPDatabase<Tables>;

  private constructor(
    readonly name: string,
    database: IDBPDatabase<Tables>,
  ) {
    this.#database = database;
  }

  /** Opens the database, or makes it with the invented patients in it. */
  static async open(name: string): Promise<ClinicStore> {
    return new ClinicStore(name, await connect(name));
  }

  /**
   * Reads or writes. The browser may close a connection (a full disk, another tab); one that is closed stays so, so that the next
   * act needs a new one.
   */
  async #use<T>(act: (database: IDBPDatabase<Tables>) => Promise<T>): Promise<T> {
    try {
      return await act(this.#database);
    } catch (error) {
      if (!(error instanceof DOMException && error.name === 'InvalidStateError')) throw error;
      this.#database = await connect(this.name);
      return act(this.#database);
    }
  }

  patients(): Promise<Patient[]> {
    return this.#use((database) => database.getAll('patients'));
  }

  patient(id: string): Promise<Patient | undefined> {
    return this.#use((database) => database.get('patients', id));
  }

  /** A patient's visits, the latest first. */
  async visits(patientId: string): Promise<Visit[]> {
    const visits = await this.#use((database) => database.getAllFromIndex('visits', 'patient', patientId));
    const when = ({ fields, savedAt }: Visit) => `${fields['date'] ?? ''} ${savedAt}`;
    return visits.map(counted).sort((a, b) => when(b).localeCompare(when(a)));
  }

  async visit(id: string): Promise<Visit | undefined> {
    const visit = await this.#use((database) => database.get('visits', id));
    return visit && counted(visit);
  }

  /**
   * Saves a visit and deletes its draft in one transaction.
   * @param visit with the revision that it was read with, none where it is new
   * @throws VisitChangedError when another revision is kept now
   */
  async saveVisit(visit: Visit, draft: string): Promise<void> {
    await this.#use(async (database) => {
      const transaction = database.transaction(['visits', 'drafts'], 'readwrite');
      await unchanged(transaction.objectStore('visits'), visit);
      await Promise.all([
        transaction.objectStore('visits').put({ ...visit, revision: (visit.revision ?? 0) + 1 }),
        transaction.objectStore('drafts').delete(draft),
        transaction.done,
      ]);
    });
  }

  /**
   * Deletes a visit and any draft of its amendment.
   * @throws VisitChangedError when it was changed or deleted since it was read
   */
  async deleteVisit(visit: Visit, draft: string): Promise<void> {
    await this.#use(async (database) => {
      const transaction = database.transaction(['visits', 'drafts'], 'readwrite');
      await unchanged(transaction.objectStore('visits'), visit);
      await Promise.all([
        transaction.objectStore('visits').delete(visit.id),
        transaction.objectStore('drafts').delete(draft),
        transaction.done,
      ]);
    });
  }

  draft(key: string): Promise<Draft | undefined> {
    return this.#use((database) => database.get('drafts', key));
  }

  async saveDraft(draft: Draft): Promise<void> {
    await this.#use(async (database) => {
      const transaction = database.transaction('drafts', 'readwrite', { durability: 'relaxed' });
      const put = transaction.store.put(draft);
      // Committed explicitly, so that the last write survives when the page unloads.
      transaction.commit();
      await Promise.all([put, transaction.done]);
    });
  }

  async deleteDraft(key: string): Promise<void> {
    await this.#use((database) => database.delete('drafts', key));
  }

  /** Resets the database to the invented patients and their visits. */
  async startAgain(): Promise<void> {
    await this.#use(async (database) => {
      const transaction = database.transaction(['patients', 'visits', 'drafts'], 'readwrite');
      const [patients, visits, drafts] = [
        transaction.objectStore('patients'),
        transaction.objectStore('visits'),
        transaction.objectStore('drafts'),
      ];
      await Promise.all([
        patients.clear(),
        visits.clear(),
        drafts.clear(),
        ...PATIENTS.map((patient) => patients.put(patient)),
        ...VISITS.map((visit) => visits.put(visit)),
        transaction.done,
      ]);
    });
  }

  close(): void {
    this.#database.close();
  }
}
