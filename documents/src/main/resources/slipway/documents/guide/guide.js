// The moving guide. Everything it says or shows is in the page; it loads, sends and keeps nothing.
(() => {
  'use strict';
  const page = document.documentElement;
  const data = JSON.parse(document.getElementById('data').textContent);
  const go = document.getElementById('go');
  const screens = [...document.querySelectorAll('[data-screen]')];
  const exercises = data.exercises.map((exercise, i) => {
    const screen = document.getElementById('exercise-' + (i + 1));
    const part = (selector) => screen.querySelector(selector);
    return {
      ...exercise,
      screen,
      draw: drawing(part('.start svg'), exercise.tracks),
      figures: [part('.start'), part('.end')],
      way: part('.way .done'),
      count: part('.count'),
      cue: part('.cue'),
      moves: part('.moves').textContent,
    };
  });
  // Time to lay the phone down and take the strap.
  const READY_SECONDS = 5;

  const say = (key, ...values) => data.words[key].replace(/\{(\d)\}/g, (_, i) => values[i]);
  const write = (element, text) => {
    // Written only when it changes, or a screen reader would repeat it with every picture.
    if (element.textContent !== text) element.textContent = text;
  };

  // ---- The pace: where a round is after some seconds. Pure.

  const smooth = (part) => (1 - Math.cos(Math.PI * part)) / 2;

  function at(pace, seconds) {
    const one = 2 * pace.way + pace.hold;
    const all = pace.minutes ? Math.ceil((pace.count * 60) / one) : pace.count;
    const done = Math.floor(seconds / one);
    const s = seconds - done * one;
    if (done >= all) return { over: true, done: all, shown: pace.count, reach: 0, leg: 'back' };
    const shown = pace.minutes ? Math.min(pace.count, Math.floor(seconds / 60) + 1) : done + 1;
    if (s < pace.way) return { done, shown, reach: smooth(s / pace.way), leg: 'there' };
    if (s < pace.way + pace.hold) return { done, shown, reach: 1, leg: 'hold' };
    return { done, shown, reach: smooth((one - s) / pace.way), leg: 'back' };
  }

  // ---- The figure: every number of a track on a curve through its values.

  function drawing(svg, tracks) {
    const elements = svg.querySelectorAll('*');
    const ready = tracks.map((track) => {
      const values = track.v.map((text) => text.match(/[a-zA-Z]|-?\d+(\.\d+)?/g));
      return { spots: track.at.map(([i, name]) => [elements[i], name]), values };
    });
    return (reach) => {
      for (const { spots, values } of ready) {
        const u = reach * (values.length - 1);
        const i = Math.min(Math.floor(u), values.length - 2);
        const text = values[i].map((from, n) => (isNaN(from) ? from : between(values, i, n, u - i))).join(' ');
        for (const [element, name] of spots) element.setAttribute(name, text);
      }
    };
  }

  // A cubic curve through four neighbours; beyond an end it goes straight on.
  function between(values, i, n, t) {
    const b = +values[i][n];
    const c = +values[i + 1][n];
    const a = i > 0 ? +values[i - 1][n] : 2 * b - c;
    const d = i + 2 < values.length ? +values[i + 2][n] : 2 * c - b;
    const x = b + (t / 2) * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
    return Math.round(x * 10) / 10;
  }

  // ---- Choices of the day.

  const chosen = { easier: false, aloud: false, still: false };
  const buttons = [...document.querySelectorAll('[data-option]')];
  const calm = matchMedia('(prefers-reduced-motion: reduce)');

  function choose(option, on) {
    chosen[option] = on;
    page.classList.toggle(option, on);
    for (const button of buttons) {
      if (button.dataset.option === option) button.setAttribute('aria-pressed', on);
    }
    if (!on && option === 'aloud') hush();
    exercises.forEach(rest);
    label();
  }

  const pace = () => (chosen.easier ? now.exercise.easier : now.exercise.usual);

  // ---- The voice. Only one that speaks on this device: others would send the words away.

  const voices = () =>
    'speechSynthesis' in window
      ? speechSynthesis.getVoices().filter((v) => v.localService && v.lang.toLowerCase().startsWith(page.lang))
      : [];

  function offerVoice() {
    for (const button of buttons) {
      if (button.dataset.option === 'aloud') button.hidden = voices().length === 0;
    }
  }

  function aloud(text) {
    const voice = voices()[0];
    if (!chosen.aloud || !voice) return;
    const words = new SpeechSynthesisUtterance(text);
    words.voice = voice;
    words.lang = voice.lang;
    speechSynthesis.cancel();
    speechSynthesis.speak(words);
  }

  function hush() {
    if ('speechSynthesis' in window) speechSynthesis.cancel();
  }

  // ---- One exercise at a time. Steps: idle, ready, moving, paused, resting (between rounds), over.

  const now = { screen: 'home', exercise: exercises[0], step: 'idle', round: 1, done: 0, since: 0, leg: '' };
  let lock = null;

  /** An exercise before its first movement. */
  function rest(exercise) {
    const p = chosen.easier ? exercise.easier : exercise.usual;
    let text = p.count === 1 ? say('once') : say('times', p.count);
    if (p.rounds > 1) text = say('rounds', p.count, p.rounds);
    if (p.minutes) text = say('minutes', p.count);
    write(exercise.count, text);
    write(exercise.cue, exercise.there);
    show(exercise, 0, '');
    if (exercise === now.exercise) Object.assign(now, { step: 'idle', round: 1, done: 0 });
  }

  function show(exercise, reach, leg) {
    const p = chosen.easier ? exercise.easier : exercise.usual;
    exercise.way.style.transform = 'scaleX(' + reach + ')';
    exercise.draw(chosen.still ? 0 : reach * p.reach);
    // Without motion the picture to go to is marked instead.
    exercise.figures[0].classList.toggle('now', chosen.still && (leg === 'ready' || leg === 'back'));
    exercise.figures[1].classList.toggle('now', chosen.still && (leg === 'there' || leg === 'hold'));
  }

  function start() {
    Object.assign(now, { step: 'ready', since: performance.now(), leg: '' });
    page.classList.add('playing');
    scrollTo(0, 0);
    show(now.exercise, 0, 'ready');
    write(now.exercise.count, say('ready', READY_SECONDS));
    write(now.exercise.cue, now.exercise.there);
    aloud(now.exercise.moves + ' ' + now.exercise.there);
    stayAwake();
    label();
    requestAnimationFrame(tick);
  }

  function halt(step) {
    now.step = step;
    page.classList.remove('playing');
    hush();
    if (lock) lock.release().catch(() => {});
    lock = null;
    label();
  }

  function pause() {
    if (now.step !== 'ready' && now.step !== 'moving') return;
    write(now.exercise.count, say('paused', now.done, pace().count));
    halt('paused');
  }

  function tick(time) {
    if (now.step === 'ready') ready((time - now.since) / 1000);
    if (now.step === 'moving') move((time - now.since) / 1000);
    if (now.step === 'ready' || now.step === 'moving') requestAnimationFrame(tick);
  }

  function ready(seconds) {
    if (seconds < READY_SECONDS) {
      write(now.exercise.count, say('ready', Math.ceil(READY_SECONDS - Math.max(0, seconds))));
      return;
    }
    // A movement that was interrupted is done again from its start.
    const one = 2 * pace().way + pace().hold;
    now.step = 'moving';
    now.since += (READY_SECONDS - (pace().minutes ? now.done * 60 : now.done * one)) * 1000;
  }

  function move(seconds) {
    const { exercise } = now;
    const p = at(pace(), seconds);
    now.done = pace().minutes ? p.shown - 1 : p.done;
    show(exercise, p.reach, p.leg);
    if (p.over) {
      finishRound();
      return;
    }
    write(exercise.count, say(pace().minutes ? 'minute' : 'count', p.shown, pace().count));
    write(exercise.cue, p.leg === 'hold' ? say('hold') : exercise[p.leg]);
    if (p.leg + p.done !== now.leg) {
      now.leg = p.leg + p.done;
      if (p.leg === 'there') aloud(String(p.shown));
      if (p.leg === 'hold') aloud(say('hold'));
    }
  }

  function finishRound() {
    const { exercise } = now;
    const last = now.round >= pace().rounds;
    show(exercise, 0, '');
    write(exercise.count, last ? say('end', pace().count) : say('rested', now.round, pace().rounds));
    write(exercise.cue, last ? say('well') : say('rest'));
    halt(last ? 'over' : 'resting');
    aloud(exercise.count.textContent + '. ' + exercise.cue.textContent);
  }

  /** The screen stays on while an exercise goes on, where the phone allows it. */
  function stayAwake() {
    if (lock || !navigator.wakeLock) return;
    navigator.wakeLock.request('screen').then((got) => (lock = got), () => {});
  }

  // ---- The one button, and the screens.

  const next = () => exercises[exercises.indexOf(now.exercise) + 1];

  function label() {
    const steps = { idle: 'start', ready: 'pause', moving: 'pause', paused: 'go-on', resting: 'round' };
    const others = { home: 'begin', stop: 'return', done: 'list' };
    const over = next() ? 'next' : 'finish';
    write(go, say(now.screen === 'exercise' ? steps[now.step] || over : others[now.screen]));
  }

  go.addEventListener('click', () => {
    if (now.screen === 'home') location.hash = 'exercise-1';
    else if (now.screen === 'stop') history.length > 1 ? history.back() : (location.hash = 'home');
    else if (now.screen === 'done') location.hash = 'home';
    else if (now.step === 'ready' || now.step === 'moving') pause();
    else if (now.step === 'over') location.hash = next() ? next().screen.id : 'done';
    else {
      if (now.step === 'resting') Object.assign(now, { round: now.round + 1, done: 0 });
      start();
    }
  });

  function turn(first) {
    pause();
    const wanted = document.getElementById(location.hash.slice(1));
    const screen = screens.includes(wanted) ? wanted : screens[0];
    const from = now.screen;
    now.screen = screen.dataset.screen;
    page.dataset.screen = now.screen;
    for (const each of screens) each.hidden = each !== screen;
    const exercise = exercises.find((each) => each.screen === screen);
    // Back from the stop rules, an exercise is where it was left.
    if (exercise && (exercise !== now.exercise || now.step === 'over')) {
      now.exercise = exercise;
      rest(exercise);
    }
    // The stop rules show those of the exercise that one comes from.
    for (const each of document.querySelectorAll('[data-of]')) {
      each.hidden = from !== 'exercise' || each.dataset.of !== now.exercise.screen.id;
    }
    label();
    if (first) return;
    scrollTo(0, 0);
    screen.querySelector('[tabindex]').focus({ preventScroll: true });
  }

  for (const button of buttons) {
    button.addEventListener('click', () => choose(button.dataset.option, !chosen[button.dataset.option]));
  }
  addEventListener('hashchange', () => turn(false));
  document.addEventListener('visibilitychange', () => document.hidden && pause());
  calm.addEventListener('change', () => choose('still', calm.matches));
  if ('speechSynthesis' in window) speechSynthesis.addEventListener('voiceschanged', offerVoice);

  page.classList.add('on');
  offerVoice();
  choose('still', calm.matches);
  turn(true);
})();
