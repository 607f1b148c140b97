import type { Database } from 'better-sqlite3';
import type { DocumentShelf } from './document-shelf.ts';
import type { RowDigests } from './row-digests.ts';
import type { Writer } from './writer.ts';

interface Row {
  readonly body: string;
  readonly revision: number;
}

export function documentShelf(db: Database, writer: Writer, digests: RowDigests): DocumentShelf {
  const find = db.prepare<[string, string], Row>(
    'SELECT body, revision FROM documents WHERE tasting = ? AND name = ?',
  );
  const insert = db.prepare<[string, string, string]>(
    'INSERT INTO documents (tasting, name, body, revision) VALUES (?, ?, ?, 1)',
  );
  const update = db.prepare<[string, string, string]>(
    'UPDATE documents SET body = ?, revision = revision + 1 WHERE tasting = ? AND name = ?',
  );
  return {
    read(tasting, name) {
      const row = find.get(tasting, name);
      return row && { body: bodyIn(row.body), revision: row.revision };
    },
    save: (tasting, name, body, base) =>
      writer.write(tasting, () => {
        if ((find.get(tasting, name)?.revision ?? 0) !== base) return undefined;
        const text = JSON.stringify(body);
        if (base === 0) insert.run(tasting, name, text);
        else update.run(text, tasting, name);
        digests.keep('documents', tasting, name);
        return base + 1;
      }),
  };
}

/** Undefined when it is no text of a document any more; whoever reads it knows its shape. */
function bodyIn(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
