// The patient's pages on the phone. Without this script the forms still work; with it nothing that was tapped is lost
// without network, and a sign of danger is answered at once.
(() => {
  'use strict';
  const texts = document.querySelector('[data-texts]')?.dataset;
  if (!texts) {
    document.querySelector('.mistakes')?.focus();
    return;
  }
  const status = document.querySelector('[data-status]');
  const place = document.querySelector('[data-who]');
  const who = place.dataset.who;
  const DRAFT = 'slipway-home-draft';
  const DRAFT_KEPT_MS = 12 * 3600 * 1000;
  const OLDEST_MS = 14 * 86400 * 1000;

  const make = (tag, text, style) => {
    const element = document.createElement(tag);
    element.textContent = text;
    if (style) element.className = style;
    return element;
  };

  function callLink(number, text, style) {
    const link = make('a', text, style);
    link.href = 'tel:' + number.replace(/[^+0-9]/g, '');
    return link;
  }

  // ---- What stands at the top: offline, what waits, what the code says.

  async function tell(state) {
    const waiting = await outbox.all();
    const lines = [];
    if (state.over) lines.push([texts.over, 'alarm']);
    if (waiting.some((report) => report.refused)) lines.push([texts.refused, 'alarm']);
    if (waiting.some((report) => report.who !== who)) lines.push([texts.foreign, 'alarm']);
    const own = waiting.filter((report) => report.who === who && !report.refused);
    if (own.some((report) => report.fields.emergency)) lines.push([texts.emergencyNotGot, 'alarm']);
    else if (own.some(outbox.isSign)) lines.push([texts.notGot + ' ' + texts.stopToday, 'alarm']);
    else if (own.length) lines.push([texts.waits, 'alarm']);
    if (state.offline) lines.push([texts.offline, 'notice']);
    // Written only when it changes, or a screen reader would say it again.
    const now = JSON.stringify(lines);
    if (status.dataset.now !== now) {
      status.dataset.now = now;
      status.replaceChildren(...lines.map(([text, style]) => make('p', text, style)));
    }
    lockIf(Boolean((await outbox.known()).locked));
  }

  /** What the phone knows locks the page that it kept, too. */
  function lockIf(locked) {
    if (!locked) return;
    for (const shown of document.querySelectorAll('[data-guide], [data-frame]')) {
      shown.hidden = true;
      shown.removeAttribute('src');
    }
    for (const alarm of document.querySelectorAll('[data-hold]')) alarm.hidden = false;
  }

  async function lockHere() {
    await outbox.know({ ...(await outbox.known()), locked: true });
    lockIf(true);
  }

  // ---- Sending.

  const zone = () => -new Date().getTimezoneOffset();

  function fieldsOf(form, submitter) {
    const fields = Object.fromEntries(new FormData(form));
    if (submitter?.name) fields[submitter.name] = submitter.value;
    for (const key of ['_csrf', 'id', 'who']) delete fields[key];
    return { ...fields, zone: zone() };
  }

  async function keep(fields) {
    const report = { id: outbox.uuid(), who, madeAt: Date.now(), fields };
    await outbox.put(report);
    if (outbox.isSign(report)) await lockHere();
    return report;
  }

  /** Sends all that waits, and asks the phone to do so later if it cannot be now. */
  async function flush() {
    const result = await outbox.flush();
    if ((await outbox.all()).length && navigator.serviceWorker) {
      const worker = await navigator.serviceWorker.getRegistration('/home');
      await worker?.sync?.register('reports').catch(() => {});
    }
    await tell(result.state);
    return result;
  }

  function refreshCopies() {
    navigator.serviceWorker?.controller?.postMessage('refresh');
  }

  /** The answer of the clinic in place of the form. */
  function answerWith(html) {
    const page = new DOMParser().parseFromString(html, 'text/html');
    const main = document.getElementById('main');
    main.replaceChildren(...page.getElementById('main').childNodes);
    scrollTo(0, 0);
    const heading = main.querySelector('h1, h2');
    heading.tabIndex = -1;
    heading.focus();
    // The answer may have locked the guide, or changed the dose.
    refreshCopies();
  }

  /** What can be said without the clinic: that it has not got this, and what is safe until then. */
  function answerAlone(report) {
    const { fields } = report;
    const sign = outbox.isSign(report);
    const box = make('section', '', 'stack tight ' + (sign ? 'alarm' : 'card'));
    box.dataset.answer = 'phone';
    box.setAttribute('role', 'status');
    const heading = make('h1', sign ? texts.notGot : texts.keptTitle);
    box.append(heading);
    if (fields.emergency) {
      box.append(make('p', texts.emergencyNotGot, 'big'), callLink(texts.number, texts.callNumber, 'button main wide'));
    } else if (sign) {
      box.append(make('p', texts.stopToday, 'big'));
    } else {
      const rose = Number(fields.worst) - Number(fields.before) >= 4 || !['0', '2', '10'].includes(fields.settle ?? '0');
      box.append(make('p', texts.kept, 'big'), make('p', rose || fields.morning === 'worse' ? texts.keptRose : texts.keptSame));
    }
    if (sign && texts.phone) box.append(callLink(texts.phone, texts.callPhone, 'button'));
    const back = make('a', texts.back, 'button');
    back.href = '/home';
    const line = make('p', '');
    line.append(back);
    document.getElementById('main').replaceChildren(box, line);
    scrollTo(0, 0);
    heading.tabIndex = -1;
    heading.focus();
  }

  function submitPlain(form, submitter) {
    const pressed = make('input', '');
    Object.assign(pressed, { type: 'hidden', name: submitter?.name || 'pressed', value: submitter?.value ?? '' });
    form.append(pressed);
    form.submit();
  }

  async function send(form, submitter) {
    const fields = fieldsOf(form, submitter);
    if (form.hasAttribute('data-session')) {
      Object.assign(fields, { begunAt: begun(), session: session() });
    }
    let report;
    try {
      report = await keep(fields);
    } catch {
      // Nothing can be kept here, in a private window say: the plain form goes straight to the clinic.
      if (navigator.onLine) submitPlain(form, submitter);
      else status.replaceChildren(make('p', texts.full, 'alarm'));
      return;
    }
    if (form.hasAttribute('data-session')) forgetDraft();
    const { answers } = await flush();
    const answer = answers.get(report.id);
    if (answer?.kept || answer?.status === 429) answerWith(answer.html);
    else if (answer?.status === 422) {
      await outbox.drop(report.id);
      answerWith(answer.html);
    } else answerAlone(report);
  }

  // ---- The form: asks what the answers so far make worth asking, and keeps what was tapped.

  const form = document.querySelector('form[data-session]');
  const part = (name) => form.querySelector('[data-field="' + name + '"]');
  const value = (name) => form.querySelector('[name="' + name + '"]:checked')?.value ?? '';

  function readDraft() {
    try {
      const kept = JSON.parse(localStorage.getItem(DRAFT) ?? 'null');
      return kept && kept.who === who && Date.now() - kept.at < DRAFT_KEPT_MS ? kept : null;
    } catch {
      return null;
    }
  }

  function draft() {
    return readDraft() ?? { who, at: Date.now(), session: outbox.uuid(), fields: {} };
  }

  const begun = () => draft().at;
  const session = () => draft().session;

  function writeDraft(change) {
    const kept = draft();
    Object.assign(kept.fields, change);
    try {
      localStorage.setItem(DRAFT, JSON.stringify(kept));
    } catch {
      // Without it only what was tapped before leaving the page is lost.
    }
  }

  function forgetDraft() {
    try {
      localStorage.removeItem(DRAFT);
    } catch {
      // Nothing was kept.
    }
  }

  function restore() {
    for (const [name, kept] of Object.entries(draft().fields)) {
      for (const input of form.querySelectorAll('[name="' + name + '"]')) {
        if (input.type === 'radio' || input.type === 'checkbox') input.checked = input.value === kept;
        else if (input.type !== 'hidden') input.value = kept;
      }
    }
  }

  function show(name, on) {
    const field = part(name);
    if (!field) return;
    field.hidden = !on;
    field.disabled = !on;
  }

  /** Where nothing was felt at the worst there is no kind, and nothing to settle. */
  function answerItself() {
    if (value('worst') !== '0') return;
    for (const [name, answer] of [['kind', 'none'], ['settle', '0']]) {
      if (!value(name)) form.querySelector('[name="' + name + '"][value="' + answer + '"]').checked = true;
    }
  }

  function askWhatMatters() {
    const rested = value('done') === 'none';
    const rise = value('worst') === '' ? 0 : Number(value('worst')) - Number(value('before') || 0);
    const slow = !['', '0', '2'].includes(value('settle'));
    form.querySelector('[data-some]').hidden = value('done') !== 'some';
    for (const name of ['worst', 'kind', 'settle']) show(name, !rested);
    const none = form.querySelector('[name=kind][value=none]');
    none.closest('label').hidden = rise > 0;
    if (rise > 0) none.checked = false;
    show('usualPain', !rested && value('kind') === 'pain');
    show('reach', !rested && (rise > 0 || slow));
    show('flare', !rested && (rise >= 4 || !['', '0', '2', '10'].includes(value('settle'))));
    const chosen = form.querySelector('select[name=exercise]')?.selectedOptions[0];
    if (chosen) form.querySelector('[name=planned]').value = chosen.dataset.planned;
  }

  function watch() {
    restore();
    askWhatMatters();
    form.addEventListener('change', ({ target }) => {
      if (!['emergency', 'weak', 'numb'].includes(target.name)) writeDraft({ [target.name]: target.value });
      else writeDraft({ [target.name]: target.checked ? target.value : '' });
      answerItself();
      askWhatMatters();
    });
  }

  // ---- Signs of danger.

  function signs(of) {
    const box = of.querySelector('.signs');
    const one = (name) => box.querySelector('[name=' + name + ']');
    const alarm = box.querySelector('[data-emergency]');
    const line = box.querySelector('[data-emergency-state]');
    const say = (text) => {
      line.hidden = false;
      line.replaceChildren(make('b', text));
    };
    const either = () => {
      const any = ['emergency', 'weak', 'numb'].some((name) => one(name).checked);
      of.querySelector('[name=none]').hidden = any;
      of.querySelector('[data-send-sign]').hidden = !any;
    };
    async function tellClinic(emergency, got, notGot) {
      const fields = { emergency, exercise: of.querySelector('[name=exercise]').value, zone: zone() };
      fields.plan = of.querySelector('[name=plan]').value;
      fields.session = of.hasAttribute('data-session') ? session() : of.querySelector('[name=session]').value;
      try {
        const report = await keep(fields);
        const { answers } = await flush();
        say(answers.get(report.id)?.kept ? got : notGot);
      } catch {
        say(notGot);
      }
    }
    one('emergency').addEventListener('change', async () => {
      const on = one('emergency').checked;
      alarm.hidden = !on && !alarm.dataset.told;
      if (on && !alarm.dataset.told) {
        alarm.dataset.told = 'yes';
        // At once, not when the form is done: whoever calls now will not come back to it.
        await tellClinic('yes', texts.emergencyGot, texts.emergencyNotGot);
      }
    });
    box.querySelector('[data-mistake]').addEventListener('click', async ({ target }) => {
      target.hidden = true;
      one('emergency').checked = false;
      one('emergency').disabled = true;
      either();
      writeDraft({ emergency: '' });
      await tellClinic('mistake', texts.mistakeDone, texts.mistakeKept);
    });
    box.addEventListener('change', either);
    either();
    if (one('emergency').checked) {
      // Tapped before the page was left: it has been told, or waits and is said above.
      alarm.hidden = false;
      alarm.dataset.told = 'yes';
      line.hidden = true;
    }
  }

  function morning(card) {
    const today = new Date(Date.now() + zone() * 60000).toISOString().slice(0, 10);
    card.hidden = today <= card.dataset.morning;
  }

  /** Says beside the question what is missing, before anything is kept. */
  function missing(of, submitter) {
    if (['emergency', 'weak', 'numb'].some((name) => of.querySelector('[name=' + name + ']').checked)) return false;
    if (submitter?.name !== 'none') return false;
    const groups = of.hasAttribute('data-morning') ? ['morning'] : ['before', 'worst', 'kind', 'usualPain', 'settle'];
    const open = groups
      .map((name) => of.querySelector('[data-field="' + name + '"]'))
      .find((field) => !field.hidden && !field.querySelector('input:checked'));
    const some = of.querySelector('[name=repetitions]');
    const count = some && value('done') === 'some' && !/^[0-9]{1,3}$/.test(some.value) ? some.closest('.field') : null;
    for (const old of of.querySelectorAll('.mistake')) old.remove();
    const field = open ?? count;
    if (!field) return false;
    const say = make('p', texts['wrong' + (count === field ? 'Done' : field.dataset.field[0].toUpperCase() + field.dataset.field.slice(1))], 'mistake');
    say.setAttribute('role', 'alert');
    (field.querySelector('legend') ?? field.querySelector('label')).after(say);
    field.scrollIntoView({ block: 'center' });
    field.querySelector('input').focus({ preventScroll: true });
    return true;
  }

  if (form) watch();
  for (const each of document.querySelectorAll('form[data-session], form[data-morning]')) {
    signs(each);
    let going = false;
    each.addEventListener('submit', async (event) => {
      event.preventDefault();
      if (going || missing(each, event.submitter)) return;
      going = true;
      await send(each, event.submitter).finally(() => { going = false; });
    });
  }
  document.querySelectorAll('[data-morning]').forEach(morning);

  // ---- Now.

  async function now() {
    const known = await outbox.known();
    if (known.who && known.who !== who) navigator.serviceWorker?.controller?.postMessage('forget');
    const { state } = await flush();
    if (!state.offline && !state.over) refreshCopies();
  }

  // Without a store on this phone the pages still work online.
  const ready = now().catch(() => {});

  // ---- Around the moving guide.

  const before = document.querySelector('form[data-before]');
  const frame = document.querySelector('[data-frame]');

  async function begin() {
    // What the clinic says now, if it says it soon.
    await Promise.race([ready, new Promise((done) => setTimeout(done, 3000))]);
    const state = await outbox.known().catch(() => null);
    if (!state) {
      location = '/home/guide.html';
      return;
    }
    if (state.locked) {
      lockIf(true);
      return;
    }
    // A fresh page from the clinic says by being here that it holds; an old copy must not go on for ever.
    if (Date.now() - (state.seen ?? 0) > OLDEST_MS || Date.now() > (state.until ?? 0)) {
      status.replaceChildren(make('p', state.over ? texts.over : texts.old, 'alarm'));
      return;
    }
    before.hidden = true;
    frame.hidden = false;
    document.body.classList.add('guided');
    frame.src = '/home/guide.html';
    frame.focus();
  }

  before?.addEventListener('change', ({ target }) => {
    forgetDraft();
    writeDraft({ before: target.value });
    begin();
  });
  before?.querySelector('[data-skip]').addEventListener('click', (event) => {
    event.preventDefault();
    begin();
  });

  // ---- Closing: the copies go, what the clinic has not got stays.

  document.querySelector('[data-leave]')?.addEventListener('submit', () => {
    forgetDraft();
    navigator.serviceWorker?.controller?.postMessage('forget');
  });

  // ---- And whenever the network or the person comes back.

  if (navigator.serviceWorker) navigator.serviceWorker.register('/home/worker.js', { scope: '/home' }).catch(() => {});
  document.querySelector('.mistakes')?.focus();
  addEventListener('online', () => flush().catch(() => {}));
  document.addEventListener('visibilitychange', () => document.hidden || flush().catch(() => {}));
})();
