import { type Paper, papers } from '@neckfall/pictures';
import PDFDocument from 'pdfkit';
import type { FaceFile } from './faces.ts';

export type Document = PDFKit.PDFDocument;

type Said = { title: string; language: string; paper: Paper; dayMs: number };

/** An empty page with its title and language; the only clock in it is the day that was asked about. */
export function openDocument({ title, language, paper, dayMs }: Said): Document {
  const { widthPt, heightPt } = papers[paper];
  const day = new Date(dayMs);
  return new PDFDocument({
    size: [widthPt, heightPt],
    margin: 0,
    // none yet: the standard faces can't be embedded
    font: '',
    pdfVersion: '1.7',
    lang: language,
    tagged: true,
    displayTitle: true,
    info: { Title: title, Creator: 'Neckfall', Producer: 'Neckfall', CreationDate: day, ModDate: day },
  });
}

/** Takes up a face; a document has each once. */
export function useFace(doc: Document, { name, bytes }: FaceFile, sizePt: number): void {
  doc.registerFont(name, bytes);
  doc.font(name).fontSize(sizePt);
}

/** All of a document once it is ended. */
export function bytesOf(doc: Document): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    const pieces: Buffer[] = [];
    doc.on('data', (piece: Buffer) => pieces.push(piece));
    doc.on('end', () => resolve(Buffer.concat(pieces)));
    doc.on('error', reject);
    doc.end();
  });
}
