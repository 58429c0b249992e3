// The questions before the first visit. The forms work without this; with it, what is typed stays on the page when the
// network or the server fails.

const form = document.querySelector('form.intake');
const words = form.querySelector('[data-lost]');

// Sent the way the browser does it, with the button that was pressed: the answer is the page to see.
const sendPlainly = (button) => {
  if (button?.name) {
    const pressed = Object.assign(document.createElement('input'), { type: 'hidden', name: button.name, value: button.value });
    form.append(pressed);
  }
  if (button?.hasAttribute('formaction')) form.action = button.formAction;
  form.submit();
};

const failed = (sentence) => {
  words.querySelector('[data-words]').textContent = sentence;
  words.querySelectorAll('[data-danger]').forEach((each) => {
    each.hidden = !form.querySelector('fieldset.danger input[value=yes]:checked');
  });
  words.hidden = false;
  words.focus();
};

form.addEventListener('submit', async (event) => {
  event.preventDefault();
  const button = event.submitter;
  const body = new URLSearchParams(new FormData(form));
  if (button?.name) body.append(button.name, button.value);
  const target = button?.hasAttribute('formaction') ? button.formAction : form.action;
  words.hidden = true;
  form.setAttribute('aria-busy', 'true');
  try {
    const answer = await fetch(target, { method: 'POST', body, signal: AbortSignal.timeout(20000) });
    if (answer.redirected) { location.assign(answer.url); return; }
    // A page of ours says what is wrong, or what to do: the same is sent once more to see it. It counts once.
    if ((await answer.text()).includes('body class="patient"')) sendPlainly(button);
    else failed(words.dataset.fault);
  } catch {
    failed(words.dataset.lost);
  } finally {
    form.removeAttribute('aria-busy');
  }
});
