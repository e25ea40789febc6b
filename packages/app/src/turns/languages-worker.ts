// the first format: see languages-known.ts
new Intl.NumberFormat();
postMessage(null);
close();
