// An SMS centre for tests on the npm package smpp, which knows nothing of the code that it judges.
//
//   node server.js SMPP-PORT HTTP-PORT [KEY-FILE CERTIFICATE-FILE]
//
// Texts come in by SMPP; HTTP sets how it behaves and tells what it has taken. With `plain` it is what speed is measured
// against: it counts, answers and reports as anybody would with the package as it comes, and reads no text.
import { readFileSync } from "node:fs";
import http from "node:http";
import smpp from "smpp";

const [smppPort, httpPort, key, certificate] = process.argv.slice(2);

const OK = 0x00, SYSTEM_ERROR = 0x08, THROTTLED = 0x58;
const STATES = { ENROUTE: 1, DELIVRD: 2, EXPIRED: 3, DELETED: 4, UNDELIV: 5, ACCEPTD: 6, UNKNOWN: 7, REJECTD: 8 };
const DEFAULTS = {
  plain: false, // the package as it comes, and nothing kept
  latency: 0, // ms before a response
  throttle: 0, // texts a second; more are refused with ESME_RTHROTTLED
  mute: 0, // so many of the next are taken and never answered
  drop: 0, // so many of the next are taken, and the connection is destroyed in place of a response
  statuses: {}, // by destination: refused with this status
  deaf: false, // enquire_link is not answered
  ids: "same", // hex: given in hexadecimal and reported in decimal; decimal: the other way round
  receipts: true, // where they are asked for
  receipt_delay: 0, // ms
  receipt_early: false, // before the response
  receipt_twice: false,
  receipt_shuffle: false, // those of one moment, the last first
  receipt_state: "DELIVRD", // or an object by destination
  receipt_form: "both", // text, options, or both
  receipt_foreign: false, // another one each time, about a text that was never here
  insist: false, // a receipt that was refused, or not answered when the line broke, comes again
  receipt_id: true, // false: only user_message_reference tells which
};

let settings = { ...DEFAULTS };
let number, counts, byDestination, texts, started, answers, unacknowledged, moments;
const sessions = new Set();

function reset() {
  number = 1_000_000_000;
  counts = { units: 0, throttled: 0, binds: 0, enquired: 0, unbound: 0, receipts: 0, again: 0 };
  byDestination = new Map();
  texts = [];
  started = new Map(); // texts of which parts are missing
  answers = [];
  unacknowledged = new Set();
  moments = [];
}
reset();

// Whatever is written in one turn of the loop leaves in one packet.
class Line {
  constructor(session) {
    this.session = session;
    this.waiting = [];
    this.sequence = 0;
    this.owed = new Map(); // what comes again, by sequence number
    this.flush = () => {
      const { socket } = this.session;
      if (socket.writable) socket.write(this.waiting.length === 1 ? this.waiting[0] : Buffer.concat(this.waiting));
      this.waiting = [];
    };
  }

  write(buffer) {
    if (this.waiting.push(buffer) === 1) setImmediate(this.flush);
  }

  respond(command, sequence, status, id = "") {
    const buffer = Buffer.allocUnsafe(status ? 16 : 17 + id.length);
    buffer.writeUInt32BE(buffer.length, 0);
    buffer.writeUInt32BE(command, 4);
    buffer.writeUInt32BE(status, 8);
    buffer.writeUInt32BE(sequence, 12);
    if (!status) {
      buffer.latin1Write(id, 16);
      buffer[buffer.length - 1] = 0;
    }
    this.write(buffer);
  }

  deliver(options) {
    const pdu = new smpp.PDU("deliver_sm", options);
    pdu.sequence_number = ++this.sequence;
    unacknowledged.add(this.sequence);
    this.write(pdu.toBuffer());
    return this.sequence;
  }

  receipt(pdu, id, state, asked = settings) {
    counts.receipts++;
    if (asked.plain) return this.plainReceipt(pdu, id, state);
    const text = asked.receipt_form === "options" ? "" :
      `${asked.receipt_id ? `id:${id} ` : ""}sub:001 dlvrd:001 submit date:2611281200 done date:2611281201 ` +
      `stat:${state} err:${state === "DELIVRD" ? "000" : "042"} text:`;
    const options = [];
    if (asked.receipt_form !== "text") {
      if (asked.receipt_id) options.push(option(0x001e, Buffer.from(`${id}\0`, "latin1")));
      options.push(option(0x0427, Buffer.from([STATES[state]])));
    }
    if (pdu.user_message_reference !== undefined) {
      options.push(option(0x0204, Buffer.from([pdu.user_message_reference >> 8, pdu.user_message_reference & 0xff])));
    }
    const sequence = ++this.sequence;
    unacknowledged.add(sequence);
    if (settings.insist) this.owed.set(sequence, (line) => line.receipt(pdu, id, state, asked));
    const head = Buffer.alloc(16);
    const body = Buffer.concat([
      Buffer.from([0, pdu.dest_addr_ton, pdu.dest_addr_npi]), Buffer.from(`${pdu.destination_addr}\0`, "latin1"),
      Buffer.from([pdu.source_addr_ton, pdu.source_addr_npi]), Buffer.from(`${pdu.source_addr}\0`, "latin1"),
      Buffer.from([4, 0, 0, 0, 0, 0, 0, 0, 0, text.length]), Buffer.from(text, "latin1"), ...options,
    ]);
    head.writeUInt32BE(16 + body.length, 0);
    head.writeUInt32BE(0x00000005, 4);
    head.writeUInt32BE(sequence, 12);
    this.write(head);
    this.write(body);
  }

  plainReceipt(pdu, id, state) {
    const { source_addr, destination_addr } = pdu;
    this.session.deliver_sm({
      source_addr: destination_addr, destination_addr: source_addr, esm_class: 4,
      short_message: `id:${id} sub:001 dlvrd:001 submit date:2611281200 done date:2611281201 stat:${state} err:000 text:`,
      receipted_message_id: id, message_state: STATES[state],
    });
  }
}

function option(tag, value) {
  const head = Buffer.allocUnsafe(4);
  head.writeUInt16BE(tag, 0);
  head.writeUInt16BE(value.length, 2);
  return Buffer.concat([head, value]);
}

function submitted(line, pdu) {
  const destination = pdu.destination_addr;
  const refused = settings.statuses[destination];
  if (refused) return respond(line, pdu, refused);
  if (settings.throttle && isTooFast()) {
    counts.throttled++;
    return respond(line, pdu, THROTTLED);
  }
  counts.units++;
  const id = number++;
  if (!settings.plain) keep(pdu);
  if (settings.drop > 0) {
    settings.drop--;
    return line.session.destroy();
  }
  const given = settings.ids === "hex" ? id.toString(16).toUpperCase() : String(id);
  const wants = settings.receipts && pdu.registered_delivery & 1;
  if (wants && settings.receipt_early) report(line, pdu, id);
  if (settings.mute > 0) settings.mute--;
  else respond(line, pdu, OK, given);
  if (!wants || settings.receipt_early) return;
  if (!settings.receipt_delay && !settings.latency && !settings.receipt_shuffle) return report(line, pdu, id);
  setTimeout(report, settings.receipt_delay + settings.latency, line, pdu, id);
}

function respond(line, pdu, status, id) {
  const answer = () => settings.plain ? line.session.send(pdu.response({ command_status: status, message_id: id })) :
    line.respond(0x80000004, pdu.sequence_number, status, id);
  if (!settings.latency) return answer();
  setTimeout(answer, settings.latency);
}

const pile = [];
function report(line, pdu, id) {
  const state = settings.receipt_state[pdu.destination_addr] ??
    (typeof settings.receipt_state === "string" ? settings.receipt_state : "DELIVRD");
  const said = settings.ids === "decimal" ? id.toString(16) : String(id);
  const tell = () => {
    line.receipt(pdu, said, state);
    if (settings.receipt_twice) line.receipt(pdu, said, state);
    if (settings.receipt_foreign) line.receipt(pdu, `7777${id}`, state, { ...settings });
  };
  if (!settings.receipt_shuffle) return tell();
  if (pile.push(tell) === 1) setTimeout(() => pile.splice(0).reverse().forEach((one) => one()), 20);
}

function isTooFast() {
  const now = Date.now();
  while (moments.length && now - moments[0] >= 1000) moments.shift();
  return moments.length >= settings.throttle || (moments.push(now), false);
}

// What a telephone would show: the package takes header and text apart, the parts are joined by their reference.
function keep(pdu) {
  byDestination.set(pdu.destination_addr, (byDestination.get(pdu.destination_addr) ?? 0) + 1);
  const { message, udh } = pdu.short_message;
  const text = {
    destination: pdu.destination_addr, destination_ton: pdu.dest_addr_ton, destination_npi: pdu.dest_addr_npi,
    source: pdu.source_addr, source_ton: pdu.source_addr_ton, source_npi: pdu.source_addr_npi,
    coding: pdu.data_coding, reference: pdu.user_message_reference ?? null, receipts: pdu.registered_delivery,
    parts: 1, text: message, well_formed: message.isWellFormed(),
  };
  const joined = udh?.find((element) => element[0] === 0 && element[1] === 3);
  if (!joined) return texts.push(text);
  const [, , reference, total, place] = joined;
  const name = `${text.source} ${text.destination} ${reference} ${total}`;
  const whole = started.get(name) ?? { ...text, parts: total, pieces: [] };
  whole.pieces[place - 1] = message;
  if (whole.pieces.filter((piece) => piece !== undefined).length < total) return started.set(name, whole);
  started.delete(name);
  const { pieces, ...rest } = whole;
  texts.push({ ...rest, text: pieces.join(""), well_formed: pieces.every((piece) => piece.isWellFormed()) });
}

const debt = []; // what nobody is bound for just now

function settle(line, pdu) {
  const again = line.owed.get(pdu.sequence_number);
  line.owed.delete(pdu.sequence_number);
  if (again && pdu.command_status !== OK) {
    counts.again++;
    setTimeout(() => (sessions.has(line) ? again(line) : debt.push(again)), 300);
  }
}

function heard(line, pdu) {
  switch (pdu.command) {
    case "submit_sm":
      return submitted(line, pdu);
    case "deliver_sm_resp":
      if (settings.plain) return;
      unacknowledged.delete(pdu.sequence_number);
      settle(line, pdu);
      return answers.push([pdu.sequence_number, pdu.command_status]);
    case "bind_transceiver":
      if (pdu.password === "wrong") return line.session.send(pdu.response({ command_status: 0x0e }));
      counts.binds++;
      sessions.add(line);
      line.session.send(pdu.response({ system_id: "smsc" }));
      return debt.splice(0).forEach((again) => again(line));
    case "enquire_link":
      counts.enquired++;
      return settings.deaf || line.session.send(pdu.response());
    case "unbind":
      counts.unbound++;
      line.session.send(pdu.response());
      return line.session.close();
    default:
      if (!pdu.isResponse()) line.session.send(pdu.response({ command_status: SYSTEM_ERROR }));
  }
}

const tls = key ? { key: readFileSync(key), cert: readFileSync(certificate) } : {};
smpp.createServer(tls, (session) => {
  const line = new Line(session);
  session.socket.setNoDelay(true);
  session.on("pdu", (pdu) => heard(line, pdu));
  session.on("error", () => session.destroy());
  session.on("close", () => {
    sessions.delete(line);
    counts.again += line.owed.size;
    debt.push(...line.owed.values());
    line.owed.clear();
  });
}).listen(Number(smppPort), "127.0.0.1");

// A text that a client writes: octets in hexadecimal, so that the test and not this centre says how it is coded.
function inject({ from, to, coding = 0, parts, esm_class = 0, options = [{}], times = 1 }) {
  const [line] = sessions;
  if (!line) throw new Error("nobody is bound");
  const numbers = [];
  for (let time = 0; time < times; time++) {
    parts.forEach((octets, place) => numbers.push(line.deliver({
      source_addr: from.replace("+", ""), source_addr_ton: from.startsWith("+") ? 1 : 0, source_addr_npi: 1,
      destination_addr: to.replace("+", ""), dest_addr_ton: to.startsWith("+") ? 1 : 0, dest_addr_npi: 1,
      esm_class, data_coding: coding, short_message: Buffer.from(octets, "hex"), ...(options[place] ?? {}),
    })));
  }
  return { numbers };
}

const ACTS = {
  "/set": (asked) => (settings = { ...settings, ...asked }),
  "/reset": () => ((settings = { ...DEFAULTS }), reset(), {}),
  "/inject": inject,
  "/raw": ({ octets }) => (sessions.forEach((line) => line.write(Buffer.from(octets, "hex"))), {}),
  "/hangup": () => (sessions.forEach((line) => line.session.destroy()), {}),
  "/unbind": () => (sessions.forEach((line) => line.session.unbind()), {}),
  "/ask": () => (sessions.forEach((line) => line.session.enquire_link()), {}),
};

http.createServer((request, response) => {
  let body = "";
  request.on("data", (piece) => (body += piece));
  request.on("end", () => {
    try {
      const told = request.url === "/count"
        ? {
          ...counts, texts, answers, sessions: sessions.size, unfinished: started.size,
          by_destination: Object.fromEntries(byDestination), unacknowledged: [...unacknowledged],
        }
        : ACTS[request.url](JSON.parse(body || "{}"));
      response.end(JSON.stringify(told));
    } catch (error) {
      response.writeHead(400).end(JSON.stringify({ error: String(error) }));
    }
  });
}).listen(Number(httpPort), "127.0.0.1");
