'use strict';
(() => {
/*QR*/
const card = JSON.parse(document.getElementById('card').textContent);
const HEADING = 'reading_id,mix_id,read_at,truck,meter_id,gauge_pct,density,density_unit,temperature_c,remarks';
const PLACE = 'readings ' + card.mix + '/r' + card.revision + (card.training ? ' training' : '');
const UNITS = ['kg/m3', 'lb/ft3'];
/* Numbers are whole numbers of a millionth: nothing is ever a binary fraction. */
const SCALE = 6;
const HUNDRED = 100n * 10n ** 6n;

function parse(text) {
  const parts = /^(-?)(\d{1,5})(?:\.(\d{1,6}))?$/.exec(text);
  if (!parts) return null;
  const value = BigInt(parts[2] + (parts[3] || '').padEnd(SCALE, '0'));
  return parts[1] ? -value : value;
}
function decimals(text) { return (text.split('.')[1] || '').length; }
function write(value, places) {
  const size = value < 0n ? -value : value;
  const digits = size.toString().padStart(SCALE + 1, '0');
  const whole = digits.slice(0, -SCALE);
  const rest = digits.slice(-SCALE).slice(0, places);
  return (value < 0n ? '-' : '') + whole + (places ? '.' + rest : '');
}
function round(value, step) {
  const size = value < 0n ? -value : value;
  let steps = size / step;
  const twice = (size % step) * 2n;
  if (twice > step || (twice === step && (card.ties === 'away' || steps % 2n === 1n))) steps += 1n;
  return (value < 0n ? -steps : steps) * step;
}
/* A fraction, rounded once to a step. */
function roundRatio(over, under, step) {
  let steps = over / (under * step);
  const twice = (over - steps * under * step) * 2n;
  if (twice > under * step || (twice === under * step && (card.ties === 'away' || steps % 2n === 1n))) steps += 1n;
  return steps * step;
}
/* What the air of a wet-sieved concrete is of its full mixture and of its mortar (ASTM C231); null where it cannot be told. */
function spread(air) {
  if (!card.volumes.total || air < 0n || air >= HUNDRED) return null;
  const [passing, total, held, mortar] = ['passing', 'total', 'held', 'mortar'].map(one => BigInt(card.volumes[one]));
  const over = HUNDRED * air * passing;
  const step = parse(card.step);
  const told = under => write(roundRatio(over, under, step), decimals(card.step));
  return { full: told(HUNDRED * total - air * held), mortar: told(HUNDRED * mortar + air * (passing - mortar)) };
}
/* What a reading means: {air, text, passes}, or {refused: key} */
function judge(text) {
  const reading = parse(text);
  if (reading === null) return { refused: 'not-a-number' };
  if (reading < 0n || reading > HUNDRED) return { refused: 'off-scale' };
  if (reading > parse(card.top)) return { refused: 'off-scale' };
  const air = reading - parse(card.subtracted);
  const looked = card.highLooksAt === 'air' ? air : reading;
  const high = card.highLooksAt !== 'never' && looked > parse(card.highAbove);
  const step = high ? card.highStep : card.step;
  const reported = round(air, parse(step));
  const target = parse(card.target);
  const tolerance = parse(card.tolerance);
  return {
    air: reported, text: write(reported, decimals(step)), negative: air < 0n, spread: spread(air),
    passes: reported >= target - tolerance && reported <= target + tolerance };
}

let language = card.language;
const typed = { gauge: '', density: '', temperature: '', truck: '', meter: '' };
let unit = UNITS[0];
let field = 'gauge';
let kept = [];
let keeps = true;
let told = '';
let asking = false;
let showing = false;
try { kept = JSON.parse(localStorage.getItem(PLACE) || '[]'); } catch (e) { keeps = false; }
function store() {
  try { localStorage.setItem(PLACE, JSON.stringify(kept)); keeps = true; } catch (e) { keeps = false; }
}

function say(key, ...values) {
  const all = card.words[language];
  return all[key].replace(/\{(\d)\}/g, (whole, at) => values[+at]);
}
function sign() { return language === 'en' ? '.' : ','; }
function shown(number) { return number.replace('.', sign()).replace('-', '\u2212'); }
function el(tag, props, ...children) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(props || {})) {
    if (name.startsWith('on')) made.addEventListener(name.slice(2), value);
    else if (value !== null) made.setAttribute(name, value);
  }
  made.append(...children.filter(child => child !== null));
  return made;
}
function two(n) { return String(n).padStart(2, '0'); }
function minute(now) {
  return now.getFullYear() + '-' + two(now.getMonth() + 1) + '-' + two(now.getDate()) + 'T' + two(now.getHours()) + ':' + two(now.getMinutes());
}
/* Whether the card holds by this phone's clock: '', 'early' or 'late'. */
function clock() {
  const now = minute(new Date());
  if (now < card.from + 'T' + (card.fromHour || '00:00')) return 'early';
  if (card.toHour ? now >= card.to + 'T' + card.toHour : now.slice(0, 10) > card.to) return 'late';
  return '';
}
function usable() { return !card.state && clock() === ''; }

function strike(key) {
  let text = typed[field];
  if (key === 'back') text = text.slice(0, -1);
  else if (key === 'clear') text = '';
  else if (key === '.') text = text.includes('.') ? text : (text || '0') + '.';
  else if (text.replace('.', '').length < 6) text += key;
  typed[field] = text;
  told = '';
  draw();
}
function offset(now) {
  const minutes = -now.getTimezoneOffset();
  const size = Math.abs(minutes);
  return (minutes < 0 ? '-' : '+') + two(Math.floor(size / 60)) + ':' + two(size % 60);
}
function number(text) { return text.endsWith('.') ? text.slice(0, -1) : text; }
function keep() {
  const gauge = number(typed.gauge);
  const outcome = judge(gauge);
  if (outcome.refused) { told = said(outcome); draw(); return; }
  for (const [name, key] of [['density', 'bad-density'], ['temperature', 'bad-temperature']]) {
    const text = number(typed[name]);
    const value = text ? parse(text) : 1n;
    const most = name === 'temperature' ? 60n : unit === UNITS[0] ? 4000n : 250n;
    if (value === null || value <= 0n || value > most * 10n ** 6n) { told = say(key); field = name; draw(); return; }
  }
  const now = new Date();
  const random = crypto.getRandomValues(new Uint32Array(1))[0].toString(36).toUpperCase().padStart(7, '0');
  const at = minute(now) + ':' + two(now.getSeconds());
  kept.push({
    id: card.mix + '/' + at.replace(/[-:]/g, '') + '-' + random, at: at + offset(now), truck: typed.truck.trim(),
    meter: typed.meter.trim(), gauge, density: number(typed.density), unit: typed.density ? unit : '',
    temperature: number(typed.temperature) });
  store();
  typed.gauge = typed.density = typed.temperature = typed.truck = '';
  field = 'gauge';
  showing = false;
  told = keeps ? say('kept', String(kept.length)) : say('not-kept');
  draw();
}
function said(outcome) {
  return outcome.refused === 'off-scale' ? say('off-scale', shown(card.top)) : say(outcome.refused);
}
function cell(text) { return /[",\r\n]/.test(text) ? '"' + text.replace(/"/g, '""') + '"' : text; }
function line(one) {
  const remarks = card.training ? 'training page; ' : '';
  return [one.id, card.mix, one.at, one.truck, one.meter, one.gauge, one.density, one.unit, one.temperature,
    remarks + 'phone page r' + card.revision].map(cell).join(',');
}
function csv(some) { return HEADING + '\r\n' + some.map(line).join('\r\n') + '\r\n'; }
function exportCsv() {
  const link = el('a', { download: 'field-readings-' + card.mix.replace(/[^A-Za-z0-9-]+/g, '_') + '.csv' });
  link.href = URL.createObjectURL(new Blob([csv(kept)], { type: 'text/csv' }));
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  told = say('exported', String(kept.length));
  draw();
}
/* The readings in parts that each fit a code that a camera still reads from a phone's glass: each part is a whole CSV. */
function parts() {
  const encoder = new TextEncoder();
  const most = capacity(15);
  const all = [];
  let part = [];
  for (const one of kept) {
    if (part.length && encoder.encode(csv([...part, one])).length > most) { all.push(part); part = []; }
    part.push(one);
  }
  if (part.length) all.push(part);
  return all.map(some => squares(encoder.encode(csv(some))));
}
function picture(grid, at, of) {
  const each = 4;
  const edge = 4;
  const side = (grid.length + 2 * edge) * each;
  const canvas = el('canvas', { width: side, height: side, role: 'img', 'aria-label': say('code-of', String(at), String(of)) });
  const pen = canvas.getContext('2d');
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, side, side);
  pen.fillStyle = '#000';
  grid.forEach((row, y) => row.forEach((dark, x) => { if (dark) pen.fillRect((x + edge) * each, (y + edge) * each, each, each); }));
  return canvas;
}
function codes() {
  const grids = parts();
  return el('div', { id: 'codes' }, ...grids.flatMap((grid, i) => grid
    ? [el('p', {}, say('code-of', String(i + 1), String(grids.length))), picture(grid, i + 1, grids.length)]
    : [el('p', { class: 'band' }, say('code-too-long'))]));
}

function pad() {
  const keys = ['7', '8', '9', '4', '5', '6', '1', '2', '3', '.', '0', 'back'];
  return el('div', { class: 'pad', role: 'group', 'aria-label': say('pad') }, ...keys.map(key => el('button', {
    type: 'button', id: 'key-' + (key === '.' ? 'point' : key), 'aria-label': key === 'back' ? say('back') : null,
    onclick: () => strike(key) }, key === 'back' ? '\u232b' : key === '.' ? sign() : key)));
}
function choice(name, label) {
  return el('button', { type: 'button', class: 'field', id: 'field-' + name, 'aria-pressed': String(field === name),
    onclick: () => { field = name; draw(); } }, el('span', {}, label), el('b', {}, typed[name] ? shown(typed[name]) : '\u2013'));
}
function input(name) {
  const made = el('input', { id: 'field-' + name, autocomplete: 'off', maxlength: '40', placeholder: say(name), 'aria-label': say(name) });
  made.value = typed[name];
  made.addEventListener('input', () => { typed[name] = made.value; });
  return made;
}
function result() {
  if (card.state) return el('p', { class: 'band', id: 'air' }, say('no-air-state'));
  if (clock()) return el('p', { class: 'band', id: 'air' }, say('no-air-clock'));
  if (!typed.gauge) return el('div', { class: 'air', id: 'air' }, say('type-first'));
  const outcome = judge(number(typed.gauge));
  if (outcome.refused) return el('div', { class: 'band', id: 'air' }, said(outcome));
  return el('div', {},
    el('div', { class: 'air ' + (outcome.passes ? 'pass' : 'fail'), id: 'air', 'data-air': outcome.text, 'data-passes': String(outcome.passes) },
      say('air', shown(outcome.text)), el('br'), el('span', { id: 'verdict' }, (outcome.passes ? '\u2714 ' : '\u2718 ') + say(outcome.passes ? 'passes' : 'fails'))),
    outcome.spread ? el('p', { id: 'spread', 'data-full': outcome.spread.full, 'data-mortar': outcome.spread.mortar },
      say('spread', shown(outcome.spread.full), shown(outcome.spread.mortar))) : null,
    outcome.negative ? el('p', { class: 'band' }, say('negative-air')) : null);
}
function bands() {
  const all = [];
  const band = (id, text) => all.push(el('p', { class: 'band', id }, text));
  if (card.training) band('training', say('training'));
  if (card.state) band('marked', say('state.' + card.state));
  const now = minute(new Date()).replace('T', ' ');
  if (clock() === 'early') band('clock', say('clock-early', now, (card.from + ' ' + card.fromHour).trim()));
  if (clock() === 'late') band('clock', say('clock-late', now, (card.to + ' ' + card.toHour).trim()));
  if (!keeps) band('no-store', say('no-store'));
  return all;
}
function readings() {
  return el('ul', { class: 'kept', id: 'kept' }, ...kept.map((one, i) => {
    const outcome = judge(one.gauge);
    const air = usable() && !outcome.refused ? ' \u2192 ' + shown(outcome.text) + ' % ' + (outcome.passes ? '\u2714' : '\u2718') : '';
    return el('li', {}, el('span', {}, one.at.slice(0, 16).replace('T', ' ') + ' ' + one.truck, el('br'), el('b', {}, shown(one.gauge) + ' %' + air)),
      el('button', { type: 'button', 'aria-label': say('remove'), onclick: () => { kept.splice(i, 1); store(); showing = false; told = say('removed'); draw(); } }, '\u2715'));
  }));
}
function draw() {
  const active = document.activeElement && document.activeElement.id;
  const open = document.getElementById('whole') && document.getElementById('whole').open;
  document.documentElement.lang = language;
  const button = (id, text, act, off) => el('button', { type: 'button', id, onclick: act, disabled: off ? '' : null }, text);
  const details = el('details', { id: 'whole' }, el('summary', {}, say('whole')), el('pre', { id: 'text' }, card.text),
    el('p', { class: 'small' }, say('code-tells')), el('p', { class: 'small' }, say('stored')));
  details.open = Boolean(open);
  document.getElementById('page').replaceChildren(...[
    el('div', { class: 'row languages', role: 'group', 'aria-label': say('language') }, ...Object.keys(card.words).map(one => el('button', {
      type: 'button', id: 'language-' + one, lang: one, 'aria-pressed': String(one === language), onclick: () => { language = one; told = ''; draw(); } },
      card.words[one].name))),
    ...bands(),
    el('h1', {}, card.mix), el('p', {}, card.title),
    el('div', { class: 'factor', id: 'factor' }, card.state ? say('do-not-subtract') : say('subtract', shown(card.g))),
    el('p', { id: 'holds' }, say('holds', card.revision, (card.from + ' ' + card.fromHour).trim(), (card.to + ' ' + card.toHour).trim())),
    el('p', {}, say('target', shown(card.target), shown(card.tolerance))),
    card.conditions ? el('p', {}, el('b', {}, say('only', card.conditions))) : null,
    card.wetSieved ? el('p', {}, el('b', {}, say('wet-sieved'))) : null,
    el('p', { class: 'small' }, say('only-mix')),
    choice('gauge', say(card.meter === 'A' ? 'gauge-a' : 'gauge')), result(), pad(),
    el('p', { id: 'told', role: 'status' }, told),
    el('div', { class: 'row' }, input('truck'), input('meter')),
    choice('density', say('density', unit)), choice('temperature', say('temperature')),
    el('div', { class: 'row' }, button('unit', say('unit', unit === UNITS[0] ? UNITS[1] : UNITS[0]), () => {
      unit = UNITS[1 - UNITS.indexOf(unit)]; draw(); }), button('clear', say('clear'), () => strike('clear'))),
    el('div', { class: 'row' }, button('keep', say('keep'), keep)),
    el('h2', {}, say('readings', String(kept.length))), readings(),
    el('div', { class: 'row' }, button('export', say('export'), exportCsv, !kept.length),
      button('code', say(showing ? 'hide-code' : 'code'), () => { showing = !showing; draw(); }, !kept.length)),
    showing ? codes() : null,
    el('div', { class: 'row' }, asking
      ? button('really', say('really'), () => { kept = []; store(); asking = false; showing = false; draw(); })
      : button('empty', say('empty'), () => { asking = true; draw(); }, !kept.length),
      asking ? button('leave', say('leave'), () => { asking = false; draw(); }) : null),
    details,
    el('p', { class: 'small' }, say('rules'))].filter(child => child !== null));
  const back = active && document.getElementById(active);
  if (back) back.focus({ preventScroll: true });
}
document.addEventListener('keydown', event => {
  if (event.target.tagName === 'INPUT') return;
  if (/^[0-9]$/.test(event.key)) strike(event.key);
  else if (event.key === '.' || event.key === ',') strike('.');
  else if (event.key === 'Backspace') strike('back');
});
draw();
setInterval(() => { if (!(document.activeElement && document.activeElement.tagName === 'INPUT')) draw(); }, 60000);
})();
