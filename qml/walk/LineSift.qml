// SPDX-License-Identifier: Apache-2.0
// Lines of the tape by words, by what is left, by mark and by stand.
import QtQuick

QtObject {
    id: root

    /// [{line, title, summary, standSlug, standName, mark, firstOfStand}]
    property var rows: []
    property string words: ""
    /// "", "left", "attention", "pass", "could_not_look" or "not_fitted".
    property string mark: ""
    property string stand: ""

    readonly property bool sifts: root.folded(root.words) !== "" || root.mark !== "" || root.stand !== ""
    readonly property var found: root.headed(root.rows.filter(one => root.fits(one)))
    /// [{slug, name}] in the order of the lap.
    readonly property var stands: root.rows.filter((one, i) => root.rows.findIndex(other => other.standSlug === one.standSlug) === i)
        .map(one => ({ slug: one.standSlug, name: one.standName }))

    /// Small letters without accents: a search does not ask how a word is written.
    function folded(text: string): string {
        return text.normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase().trim();
    }
    function counted(mark: string): int {
        return root.rows.filter(one => root.marked(one, mark)).length;
    }
    function marked(row: var, mark: string): bool {
        switch (mark) {
        case "": return true;
        case "left": return row.mark === "not_looked";
        case "attention": return /^(attention|watch|mend|hold)$/.test(row.mark);
        default: return row.mark === mark;
        }
    }
    function fits(row: var): bool {
        const text = root.folded(row.title + " " + row.standName + " " + row.summary);
        return root.marked(row, root.mark) && (root.stand === "" || row.standSlug === root.stand)
            && root.folded(root.words).split(/\s+/).every(word => text.indexOf(word) >= 0);
    }
    /// A stand is named at its first line that is left.
    function headed(rows: var): var {
        return rows.map((one, i) => Object.assign({}, one, { firstOfStand: i === 0 || rows[i - 1].standSlug !== one.standSlug }));
    }
}
