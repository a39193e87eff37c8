// SPDX-License-Identifier: Apache-2.0
// Fields from the table of inputs.
#include "bench_inputs.hpp"

#include "base/text.hpp"
#include "bench_words.hpp"

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(BenchInputs)
};

bool isNumber(const BenchInput &input)
{
    return input.kind == AskKind::Quantity || input.kind == AskKind::Count || input.kind == AskKind::List;
}

QString kindOf(const BenchInput &input)
{
    switch (input.kind) {
    case AskKind::Word:
        return QStringLiteral("words");
    case AskKind::Flag:
        return QStringLiteral("flag");
    case AskKind::Date:
        return QStringLiteral("date");
    case AskKind::Text:
        return QStringLiteral("text");
    default:
        return QStringLiteral("number");
    }
}

QVariantList choicesOf(const Voice &voice, const BenchInput &input)
{
    QVariantList list;
    for (const std::string_view word : split(input.words, ' ')) {
        if (!word.empty())
            list << QVariantMap{{QStringLiteral("slug"), Voice::text(word)},
                                {QStringLiteral("name"), benchChoice(voice, word)}};
    }
    return list;
}

QString unitNote(const Voice &voice, const BenchInput &input)
{
    const QString symbol = Voice::text(displayUnit(input.dimension, voice.units, input.typical).symbol);
    return symbol.isEmpty() ? QString() : Words::tr("without a unit: %1", "unit symbol").arg(symbol);
}

QString noteOf(const Voice &voice, const BenchInput &input, const QString &about)
{
    QStringList parts;
    if (!about.isEmpty() && input.kind != AskKind::Word) // its words stand there to be pressed
        parts << about;
    if (input.kind == AskKind::List)
        parts << Words::tr("parted by semicolons");
    if (input.kind == AskKind::Date)
        parts << Words::tr("written as 2026-11-24");
    if (isNumber(input))
        parts << unitNote(voice, input);
    if (!input.usual.empty())
        parts << Words::tr("left empty: %1", "the usual figure")
                     .arg(input.kind == AskKind::Word ? benchChoice(voice, input.usual)
                                                      : Voice::text(input.usual));
    parts.removeAll(QString());
    return parts.join(QStringLiteral("; "));
}

// "65 psi = 448.2 kPa; 70 psi = 482.6 kPa" with all numbers as the language writes them.
QString bothSides(const Voice &voice, const std::string &text)
{
    QStringList figures;
    for (const QString &figure : Voice::text(text).split(QStringLiteral("; "))) {
        QStringList sides;
        for (const QString &side : figure.split(QStringLiteral(" = ")))
            sides << voice.localised(side.toStdString());
        figures << sides.join(QStringLiteral(" = "));
    }
    return figures.join(QStringLiteral("; "));
}

// One input apart from the rest; one that its text may fill as well comes along.
void readAlone(const Voice &voice, const BenchQuestion &question, const BenchInput &input,
               const std::string &text, CivilDate today, BenchInputRow &row)
{
    std::vector<BenchInput> inputs{input};
    for (const BenchInput &other : question.inputs) {
        if (!input.at.empty() && other.name == input.at)
            inputs.push_back(other);
    }
    for (BenchInput &one : inputs)
        one.required = false;
    BenchQuestion alone = question;
    alone.inputs = inputs;
    const auto typed = BenchTyped::read(alone, {{std::string(input.name), text}}, voice.units, today);
    if (!typed) {
        row.problem = benchRefusal(voice, question, typed.error());
        return;
    }
    for (const BenchUnderstood &one : typed->understood()) {
        if (one.name == input.name && isNumber(input))
            row.understood = bothSides(voice, one.text);
    }
}

} // namespace

BenchInputModel::BenchInputModel(QObject *parent)
    : RowModel({{"name", [](const BenchInputRow &r) { return QVariant(r.key); }},
                {"label", [](const BenchInputRow &r) { return QVariant(r.label); }},
                {"note", [](const BenchInputRow &r) { return QVariant(r.note); }},
                {"kind", [](const BenchInputRow &r) { return QVariant(r.kind); }},
                {"wide", [](const BenchInputRow &r) { return QVariant(r.wide); }},
                {"choices", [](const BenchInputRow &r) { return QVariant(r.choices); }},
                {"typed", [](const BenchInputRow &r) { return QVariant(r.typed); }},
                {"understood", [](const BenchInputRow &r) { return QVariant(r.understood); }},
                {"problem", [](const BenchInputRow &r) { return QVariant(r.problem); }},
                {"needed", [](const BenchInputRow &r) { return QVariant(r.required); }}},
               parent)
{}

PlainNumbers plainInput(const Voice &voice, const BenchInput &input, const std::string &typed)
{
    const bool isList = input.kind == AskKind::List;
    const bool isNumber = input.kind == AskKind::Quantity || input.kind == AskKind::Count || isList;
    if (!isNumber || (isList && voice.numberStyle().decimal == '.'))
        return {typed, std::nullopt};
    return plainNumbers(typed, voice.numberStyle());
}

std::vector<BenchInputRow> benchInputRows(const Voice &voice, const BenchQuestion &question,
                                          const BenchTexts &texts, const BenchTexts &byHand, CivilDate today)
{
    std::vector<BenchInputRow> rows;
    for (const BenchInput &input : question.inputs) {
        const BenchLabel label = benchInputLabel(voice, question, input);
        BenchInputRow row;
        row.key = Voice::text(input.name);
        row.label = label.name;
        row.kind = kindOf(input);
        row.wide = input.kind == AskKind::List;
        row.choices = choicesOf(voice, input);
        row.note = noteOf(voice, input, label.about);
        row.required = input.required;
        const auto found = texts.find(input.name);
        if (found != texts.end() && !trim(found->second).empty()) {
            const auto typed = byHand.find(input.name);
            row.typed = Voice::text(typed == byHand.end() ? found->second : typed->second);
            const PlainNumbers plain = typed == byHand.end() ? PlainNumbers{found->second, std::nullopt}
                                                             : plainInput(voice, input, typed->second);
            if (plain.doubtful)
                row.problem = voice.twoWays(*plain.doubtful);
            else
                readAlone(voice, question, input, plain.text, today, row);
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace snugwalk
