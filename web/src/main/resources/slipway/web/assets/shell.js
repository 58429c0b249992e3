// What every page does: keeps what is typed, and signs out whoever is away.

// A form that edits a part of the record is kept on the server a moment after each change.
const kept = document.querySelector('form[data-draft]');
let waiting = 0;
let changed = false;
let sending = Promise.resolve();
const send = async () => {
  try {
    await fetch(kept.action.replace('/sections/', '/drafts/'), {
      method: 'POST', body: new URLSearchParams(new FormData(kept)), keepalive: true,
    });
  } catch { changed = true; } // without network it is tried again with the next change
};
// Ends when all that was typed has arrived: what is still on its way must not come after a sign-out.
const keep = () => {
  clearTimeout(waiting);
  if (kept && changed) {
    changed = false;
    sending = sending.then(send);
  }
  return sending;
};
kept?.addEventListener('input', () => {
  changed = true;
  clearTimeout(waiting);
  waiting = setTimeout(keep, 1500);
});
// A kept entry must not outlive the one that was saved.
kept?.addEventListener('submit', () => { clearTimeout(waiting); changed = false; });
// A page that goes away waits for nothing.
addEventListener('pagehide', () => { if (kept && changed) { changed = false; send(); } });

const idle = document.querySelector('[data-idle-minutes]');
if (idle) {
  const seconds = Number(idle.dataset.idleMinutes) * 60;
  let last = Date.now();
  let told = Date.now();
  const seen = () => {
    last = Date.now();
    idle.hidden = true;
    // The server counts requests, the person counts keys: tell it now and then.
    if (last - told > 60000) { told = last; fetch('/alive', { method: 'GET' }).catch(() => {}); }
  };
  ['pointerdown', 'keydown'].forEach((kind) => addEventListener(kind, seen, { passive: true }));
  const look = async () => {
    const left = seconds - (Date.now() - last) / 1000;
    if (left <= 0) {
      await keep();
      document.querySelector('form.out').submit();
    } else {
      idle.hidden = left > 60;
      setTimeout(look, Math.min(5000, left * 1000));
    }
  };
  if (seconds > 0) look();
}

// The first mistake gets the focus, so that it is read out and seen.
document.querySelector('.mistakes')?.focus();

// "I asked each of these: the rest is no" fills what is not answered in its group.
document.querySelectorAll('[data-rest]').forEach((button) => {
  button.hidden = false;
  button.addEventListener('click', () => {
    const group = button.closest('[data-group]');
    group.querySelectorAll('fieldset').forEach((question) => {
      // What the person told by phone is looked at one by one.
      if (!question.querySelector('input:checked') && question.dataset.told === undefined) {
        question.querySelector(`input[value="${button.dataset.rest}"]`).checked = true;
      }
    });
    button.dispatchEvent(new Event('change', { bubbles: true }));
  });
});

// Why a field says other than what the person told is asked as soon as somebody writes into it.
document.querySelectorAll('[data-why]').forEach((why) => {
  const field = why.closest('.field, .question');
  field?.addEventListener('input', (event) => { if (!why.contains(event.target)) why.hidden = false; });
});
