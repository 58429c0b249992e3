// What was told and the clinic has not got yet, kept on this phone; shared by the pages and their worker.
const outbox = (() => {
  'use strict';
  const HEADERS = { 'X-Requested-With': 'page' };
  let opened = null;

  const open = () => (opened ??= new Promise((done, failed) => {
    const request = indexedDB.open('slipway-home', 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore('reports', { keyPath: 'id' });
      request.result.createObjectStore('known');
    };
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  }));

  async function run(store, mode, work) {
    const db = await open();
    return new Promise((done, failed) => {
      const transaction = db.transaction(store, mode);
      const request = work(transaction.objectStore(store));
      // Only what is on the phone's disk counts as kept.
      transaction.oncomplete = () => done(request.result);
      transaction.onerror = transaction.onabort = () => failed(transaction.error);
    });
  }

  const put = (report) => run('reports', 'readwrite', (store) => store.put(report));
  const all = () => run('reports', 'readonly', (store) => store.getAll());
  const drop = (id) => run('reports', 'readwrite', (store) => store.delete(id));
  const known = async () => (await run('known', 'readonly', (store) => store.get('state'))) ?? {};
  const know = (state) => run('known', 'readwrite', (store) => store.put(state, 'state'));

  const isSign = ({ fields }) => Boolean(fields.emergency || fields.weak || fields.numb);

  function uuid() {
    if (crypto.randomUUID) return crypto.randomUUID();
    // Pages without TLS have no randomUUID; version 4 by hand.
    const hex = [...crypto.getRandomValues(new Uint8Array(16))]
      .map((byte, i) => (i === 6 ? (byte & 15) | 64 : i === 8 ? (byte & 63) | 128 : byte).toString(16).padStart(2, '0'))
      .join('');
    return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
  }

  /** What the clinic says now; { offline } without network, { over } if the code does not hold any more. */
  async function ask() {
    let answer;
    try {
      answer = await fetch('/home/state', { headers: HEADERS, cache: 'no-store', signal: AbortSignal.timeout(8000) });
    } catch {
      return { offline: true };
    }
    if (answer.status === 401 || answer.status === 403) {
      await know({ ...(await known()), over: true });
      return { over: true };
    }
    if (!answer.ok) return { offline: true };
    const state = await answer.json();
    const waiting = (await all()).some((report) => report.who === state.who && isSign(report));
    // A sign that the clinic has not got locks here until it has, and a clinician says go on.
    const locked = state.locked || waiting;
    await know({ who: state.who, locked, plan: state.plan, until: state.until, seen: Date.now() });
    return { ...state, locked };
  }

  async function send(report, state) {
    const fields = { ...report.fields, id: report.id, who: report.who, madeAt: report.madeAt, sentAt: Date.now(), _csrf: state.proof };
    const answer = await fetch('/home/report', {
      method: 'POST',
      headers: HEADERS,
      body: new URLSearchParams(fields),
      cache: 'no-store',
      signal: AbortSignal.timeout(20000),
    });
    return { status: answer.status, kept: answer.headers.get('X-Kept'), html: await answer.text() };
  }

  /** Sends what waits, oldest first. Tells the state and the answer to each. Twice at once does no harm: ids count. */
  async function flush() {
    const state = await ask();
    const answers = new Map();
    if (state.offline || state.over) return { state, answers };
    const waiting = (await all()).filter((report) => !report.refused).sort((a, b) => a.madeAt - b.madeAt);
    for (const report of waiting) {
      if (report.who !== state.who) continue;
      let answer;
      try {
        answer = await send(report, state);
      } catch {
        return { state: { ...state, offline: true }, answers };
      }
      answers.set(report.id, answer);
      if (answer.kept) await drop(report.id);
      else if (answer.status === 422 || answer.status === 409) await put({ ...report, refused: answer.status });
      // Too many, or a fault over there: the rest waits too.
      else return { state, answers };
    }
    // A sign that has just arrived locks.
    return { state: answers.size ? await ask() : state, answers };
  }

  return { put, all, drop, known, know, isSign, uuid, ask, flush };
})();
