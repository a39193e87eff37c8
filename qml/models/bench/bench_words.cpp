// SPDX-License-Identifier: Apache-2.0
// Words for the bench: what is data is looked up, what is the app's own is translated.
#include "bench_words.hpp"

#include <algorithm>
#include <cmath>

#include "base/text.hpp"
#include "bench/ask/ask.hpp"
#include "bench/ask/show.hpp"

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(BenchWords)
};

constexpr double anywhere = 1e6; ///< limits beyond this are there for the arithmetic alone

QString capital(QString text)
{
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

QString word(const Voice &voice, const BenchQuestion &question, std::string_view slug,
             std::string_view group = {})
{
    return Voice::text(voice.texts.benchWord(question.name, slug, group));
}

QString rangeOf(const Voice &voice, const BenchFigure &figure)
{
    const Estimate &e = figure.estimate;
    if (!(e.low < e.high))
        return {};
    const auto shown = [&](double si) { return voice.localised(showFigure(figure, si, voice.units)); };
    return Words::tr("%1 to %2, in %3 of 100 cases", "a range, how sure")
        .arg(shown(e.low), shown(e.high), voice.number(std::round(e.level * 100.0), 0));
}

const BenchInput *inputNamed(const BenchQuestion &question, std::string_view name)
{
    const auto found = std::find_if(question.inputs.begin(), question.inputs.end(),
                                    [&](const BenchInput &input) { return input.name == name; });
    return found == question.inputs.end() ? nullptr : &*found;
}

QString limits(const Voice &voice, const BenchInput &input)
{
    const auto shown = [&](double si) { return voice.localised(showFor(input.dimension, si, voice.units)); };
    const bool hasLow = input.low > -anywhere;
    const bool hasHigh = input.high < anywhere;
    if (hasLow && hasHigh)
        return Words::tr("It can be %1 to %2.", "limits of a figure")
            .arg(shown(input.low), shown(input.high));
    if (hasLow)
        return Words::tr("It is at least %1.").arg(shown(input.low));
    if (hasHigh)
        return Words::tr("It is at most %1.").arg(shown(input.high));
    return Words::tr("Check the number and its unit.");
}

QString refusalOf(const Voice &voice, const BenchInput &input, Errc code)
{
    if (code == Errc::OutOfRange)
        return Words::tr("Beyond what can be worked out.") + u' ' + limits(voice, input);
    switch (input.kind) {
    case AskKind::Date:
        return Words::tr("Not a date. Write it as 2026-11-24.");
    case AskKind::Word:
        return Words::tr("Choose one of the words.");
    case AskKind::Count:
        return Words::tr("Not understood. Write a whole number.");
    case AskKind::Text:
    case AskKind::Flag:
        return Words::tr("Not understood. Write it as in the worked example.");
    default:
        break;
    }
    const QString unit = Voice::text(displayUnit(input.dimension, voice.units, input.typical).symbol);
    return unit.isEmpty()
               ? Words::tr("Not understood. Write the number alone.")
               : Words::tr("Not understood. Write the number with its unit, %1 or another.").arg(unit);
}

} // namespace

QString benchTitle(const Voice &voice, const BenchQuestion &question)
{
    return word(voice, question, "title");
}

QString benchAbout(const Voice &voice, const BenchQuestion &question)
{
    return capital(word(voice, question, "about"));
}

BenchLabel benchInputLabel(const Voice &voice, const BenchQuestion &question, const BenchInput &input)
{
    const QString whole = word(voice, question, input.name, "inputs");
    const qsizetype colon = whole.indexOf(QStringLiteral(": "));
    return {capital(whole.left(colon)), colon < 0 ? QString() : whole.mid(colon + 2)};
}

QString benchChoice(const Voice &voice, std::string_view word)
{
    return voice.word("bench_words", word).replace(u'_', u' ');
}

QStringList benchCautions(const Voice &voice, const BenchQuestion &question)
{
    QStringList list;
    for (const std::string_view slug : split(question.cautions, ' ')) {
        if (!slug.empty())
            list << voice.word("bench_cautions", slug);
    }
    return list;
}

QVariantList benchSubjects(const Voice &voice)
{
    QVariantList subjects;
    QVariantList questions;
    const auto &all = benchQuestions();
    for (std::size_t i = 0; i < all.size(); ++i) {
        questions << QVariantMap{{QStringLiteral("slug"), Voice::text(all[i].name)},
                                 {QStringLiteral("title"), benchTitle(voice, all[i])},
                                 {QStringLiteral("about"), benchAbout(voice, all[i])}};
        if (i + 1 < all.size() && all[i + 1].subject == all[i].subject)
            continue;
        subjects << QVariantMap{{QStringLiteral("slug"), Voice::text(all[i].subject)},
                                {QStringLiteral("title"), voice.word("bench_subjects", all[i].subject)},
                                {QStringLiteral("questions"), questions}};
        questions.clear();
    }
    return subjects;
}

QVariantList benchFigures(const Voice &voice, const BenchQuestion &question, const BenchAnswer &answer)
{
    QVariantList list;
    for (const BenchFigure &figure : answer.figures) {
        const Estimate &e = figure.estimate;
        list << QVariantMap{
            {QStringLiteral("label"), word(voice, question, figure.name, "figures")},
            {QStringLiteral("value"), voice.localised(showFigure(figure, e.value, voice.units))},
            {QStringLiteral("range"), rangeOf(voice, figure)},
            {QStringLiteral("basis"), voice.basis(e.basis)},
            {QStringLiteral("source"), Voice::text(voice.texts.benchSources(e.source))}};
    }
    return list;
}

QStringList benchLines(const Voice &voice, const BenchQuestion &question, const BenchAnswer &answer)
{
    QStringList list;
    for (const BenchLine &line : answer.lines) {
        std::string words = voice.texts.benchWord(question.name, line.name, "lines");
        // from the last to the first, so that %1 is not found in %10
        for (std::size_t i = line.values.size(); i > 0; --i)
            words = replaceAll(std::move(words), "%" + std::to_string(i), line.values[i - 1]);
        list << Voice::text(words);
    }
    return list;
}

QStringList benchWarnings(const Voice &voice, const BenchAnswer &answer)
{
    QStringList list;
    for (const BenchFigure &figure : answer.figures) {
        for (const std::string &slug : figure.estimate.warnings)
            list << voice.word("bench_warnings", slug);
    }
    list.removeDuplicates();
    return list;
}

QString benchAssumed(const Voice &voice, const BenchQuestion &question, const BenchAnswer &answer)
{
    QStringList list;
    for (const BenchUnderstood &one : answer.understood) {
        const BenchInput *input = inputNamed(question, one.name);
        if (!one.defaulted || input == nullptr)
            continue;
        const QString value =
            input->kind == AskKind::Word ? benchChoice(voice, one.text) : voice.localised(one.text);
        list << Words::tr("%1 %2", "name of a figure, value")
                    .arg(benchInputLabel(voice, question, *input).name, value);
    }
    return list.isEmpty() ? QString() : Words::tr("Taken as usual: %1.").arg(list.join(QStringLiteral("; ")));
}

QString benchRefusal(const Voice &voice, const BenchQuestion &question, const Error &error)
{
    const BenchInput *input = inputNamed(question, error.where);
    return input == nullptr ? benchConflict(voice, error) : refusalOf(voice, *input, error.code);
}

QString benchConflict(const Voice &voice, const Error &error)
{
    const bool isEnglish = voice.locale.language() == QLocale::English;
    const QString known = isEnglish ? Voice::text(error.what) : voice.word("bench_refusals", error.what);
    if (isEnglish || known != Voice::text(error.what)) // a word that is missing comes back as its slug
        return Words::tr("%1. Read it again.", "what does not go together").arg(capital(known));
    return error.code == Errc::OutOfRange
               ? Words::tr("Beyond what can be worked out. Read it again.")
               : Words::tr("This does not go with the other figures. Read it again.");
}

} // namespace snugwalk
