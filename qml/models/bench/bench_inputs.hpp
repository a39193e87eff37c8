// SPDX-License-Identifier: Apache-2.0
// The fields of one question of the bench: what each asks for, what was typed, how it was understood.
#pragma once

#include <map>

#include <QtQml/qqmlregistration.h>

#include "bench/ask/ask.hpp"
#include "row_model.hpp"
#include "snapshot.hpp"

namespace snugwalk {

struct BenchInputRow {
    QString key; ///< the input's name
    QString label;
    QString note;         ///< what is meant by it, and what a bare number is read as
    QString kind;         ///< "number", "text", "date", "words" or "flag"
    bool wide = false;    ///< several figures are typed in it
    QVariantList choices; ///< of words: [{slug, name}]
    QString typed;
    QString understood; ///< "65 psi = 448.2 kPa"; empty until something is
    QString problem;
    bool required = false;
};

class BenchInputModel : public RowModel<BenchInputRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the bench")
public:
    explicit BenchInputModel(QObject *parent);
};

/// What a person typed, as the bench reads it: numbers by the marks of their language. In English a list
/// keeps its commas, which part its figures.
[[nodiscard]] PlainNumbers plainInput(const Voice &voice, const BenchInput &input, const std::string &typed);

/// One row an input, each read by itself, so that a fault stands at its own field.
/// \param texts as the bench reads them; \param byHand as a person typed them, where one did
[[nodiscard]] std::vector<BenchInputRow> benchInputRows(const Voice &voice, const BenchQuestion &question,
                                                        const BenchTexts &texts, const BenchTexts &byHand,
                                                        CivilDate today);

} // namespace snugwalk
