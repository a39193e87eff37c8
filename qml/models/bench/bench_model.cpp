// SPDX-License-Identifier: Apache-2.0
// Asking the table, field by field, and keeping what came out.
#include "bench_model.hpp"

#include <algorithm>

#include "bench_pictures.hpp"
#include "bench_words.hpp"
#include "catalogue/pick.hpp"
#include "due/band.hpp"
#include "due_words.hpp"
#include "logbook/query.hpp"
#include "round/bench_of_rig.hpp"
#include "round/keep_figure.hpp"
#include "wheel_map.hpp"

namespace snugwalk {
namespace {

constexpr const char *wheelFitted = "wheel_fitted";

QVariantList namedPlaces(const Voice &voice, const std::vector<std::string> &places)
{
    QVariantList list;
    for (const std::string &place : places)
        list << QVariantMap{{QStringLiteral("slug"), Voice::text(place)},
                            {QStringLiteral("name"), voice.placeName(place)}};
    return list;
}

} // namespace

BenchModel::BenchModel(const ActDesk *desk, QObject *parent)
    : QObject(parent), m_desk(desk), m_inputs(nullptr)
{}

QString BenchModel::question() const { return m_open ? Voice::text(m_open->name) : QString(); }

QString BenchModel::title() const { return m_open ? benchTitle(*m_shown.voice, *m_open) : QString(); }

QString BenchModel::about() const { return m_open ? benchAbout(*m_shown.voice, *m_open) : QString(); }

QStringList BenchModel::cautions() const
{
    return m_open ? benchCautions(*m_shown.voice, *m_open) : QStringList();
}

QVariantList BenchModel::figures() const
{
    return m_answer ? benchFigures(*m_shown.voice, *m_open, *m_answer) : QVariantList();
}

QStringList BenchModel::lines() const
{
    return m_answer ? benchLines(*m_shown.voice, *m_open, *m_answer) : QStringList();
}

QStringList BenchModel::warnings() const
{
    return m_answer ? benchWarnings(*m_shown.voice, *m_answer) : QStringList();
}

QString BenchModel::assumed() const
{
    return m_answer ? benchAssumed(*m_shown.voice, *m_open, *m_answer) : QString();
}

void BenchModel::draw(const BenchTexts &typed)
{
    QVariantList list;
    if (m_open != nullptr) {
        list = benchPictures(*m_shown.voice, *m_open, typed, today(), m_answer ? &*m_answer : nullptr);
        const QVariantMap wheels = wheelMap(m_shown, catalogue(), *m_open);
        if (!wheels.isEmpty())
            list << wheels;
    }
    if (list == m_pictures)
        return;
    m_pictures = std::move(list);
    Q_EMIT picturesChanged();
}

const Point *BenchModel::keptOn() const
{
    return m_open == nullptr || m_open->point.empty() || m_shown.history() == nullptr
               ? nullptr
               : catalogue().find(m_open->point);
}

QString BenchModel::whyNotKept(const Point &point) const
{
    const QString title = m_shown.voice->point(point.slug);
    const WalkRecord *walk = m_shown.snapshot->openWalk();
    if (walk == nullptr)
        return tr("To keep it, start a walk and mark “%1” first.", "a point").arg(title);
    const Mark *mark = findMark(walk->marks, point.slug);
    if (mark == nullptr)
        return tr("To keep it, mark “%1” on this walk first: what it got is said by a person.", "a point")
            .arg(title);
    if (mark->state == MarkState::Attention)
        return tr("“%1” is on attention: its readings go with the finding.", "a point").arg(title);
    return {};
}

QVariantMap BenchModel::keeping() const
{
    const Point *point = keptOn();
    if (point == nullptr || !m_answer)
        return {};
    const Voice &voice = *m_shown.voice;
    const QString whyNot = whyNotKept(*point);
    return {
        {QStringLiteral("able"), whyNot.isEmpty() && !isBusy()},
        {QStringLiteral("what"), tr("%1, on “%2”", "reading, point")
                                     .arg(voice.word("readings", m_open->reading), voice.point(point->slug))},
        {QStringLiteral("stands"), m_kept.isEmpty() ? whyNot : m_kept},
        {QStringLiteral("places"), namedPlaces(voice, placesOf(*point, m_shown.history()->rig))}};
}

QVariantMap BenchModel::fitting() const
{
    if (m_open == nullptr || m_shown.history() == nullptr || m_open->subject != "wheels")
        return {};
    const auto event = catalogue().events().find(wheelFitted);
    const auto places = wheelNames(m_shown.history()->rig);
    if (event == catalogue().events().end() || event->second.empty() || places.empty())
        return {};
    const std::string &point = event->second.front();
    const DueBand *band = findBand(m_shown.snapshot->bands, point);
    const bool isOpen = band != nullptr && band->rule == std::string("event:") + wheelFitted;
    const Voice &voice = *m_shown.voice;
    return {{QStringLiteral("places"), namedPlaces(voice, places)},
            {QStringLiteral("point"), Voice::text(point)},
            {QStringLiteral("title"), voice.point(point)},
            {QStringLiteral("when"), isOpen ? dueWhen(voice, *band, today()) : QString()},
            {QStringLiteral("why"), isOpen ? dueWhy(voice, *band) : QStringList()}};
}

const BenchTexts &BenchModel::byHand() const
{
    static const BenchTexts none;
    const auto found = m_open == nullptr ? m_byHand.end() : m_byHand.find(std::string(m_open->name));
    return found == m_byHand.end() ? none : found->second;
}

BenchTexts BenchModel::texts() const
{
    const auto found = m_typed.find(std::string(m_open->name));
    BenchTexts typed = found == m_typed.end() ? BenchTexts() : found->second;
    for (const BenchInput &input : m_open->inputs) {
        const auto hand = byHand().find(input.name);
        if (hand == byHand().end())
            continue;
        const PlainNumbers plain = plainInput(*m_shown.voice, input, hand->second);
        typed[hand->first] = plain.doubtful ? hand->second + "?" : plain.text; // no parser takes a question
    }
    if (m_shown.history() == nullptr)
        return typed;
    return withTextsOfRig(*m_open, std::move(typed), *m_shown.history(), m_shown.snapshot->world.get(),
                          m_shown.voice->units, today());
}

void BenchModel::show(const Shown &shown)
{
    m_shown = shown;
    m_subjects = benchSubjects(*shown.voice);
    work();
}

void BenchModel::open(const QString &question)
{
    const auto &all = benchQuestions();
    const BenchQuestion *found = findBenchQuestion(question.toStdString());
    if (found == nullptr)
        found = m_open != nullptr || all.empty() ? m_open : &all.front();
    if (found != m_open)
        m_kept.clear();
    m_open = found;
    work();
}

void BenchModel::type(const QString &input, const QString &text)
{
    if (m_open == nullptr)
        return;
    m_typed[std::string(m_open->name)][input.toStdString()] = text.toStdString();
    m_byHand[std::string(m_open->name)][input.toStdString()] = text.toStdString();
    m_kept.clear();
    work();
}

void BenchModel::showExample()
{
    if (m_open == nullptr)
        return;
    BenchTexts typed = exampleOf(*m_open);
    for (const BenchInput &input : m_open->inputs)
        typed.try_emplace(std::string(input.name)); // nothing of this rig beside the example's figures
    m_typed[std::string(m_open->name)] = std::move(typed);
    m_byHand.erase(std::string(m_open->name));
    m_kept.clear();
    work();
}

void BenchModel::clear()
{
    if (m_open == nullptr)
        return;
    m_typed.erase(std::string(m_open->name));
    m_byHand.erase(std::string(m_open->name));
    m_kept.clear();
    work();
}

// A fault goes to its field; a figure that nobody typed yet is no fault.
void BenchModel::refuse(const Error &error, std::vector<BenchInputRow> &rows)
{
    QStringList missing;
    for (BenchInputRow &row : rows) {
        if (row.required && row.typed.isEmpty())
            missing << row.label;
    }
    const QString where = Voice::text(error.where);
    const auto at =
        std::find_if(rows.begin(), rows.end(), [&](const BenchInputRow &row) { return row.key == where; });
    if (error.code == Errc::Usage && (!missing.isEmpty() || (at != rows.end() && at->typed.isEmpty()))) {
        if (missing.isEmpty()) {
            missing << at->label;
            at->required = true; // of two that may stay empty, one is asked for: it comes into sight
        }
        m_missing = tr("Still to type: %1.").arg(missing.join(QStringLiteral("; ")));
        return;
    }
    const QString words = benchConflict(*m_shown.voice, error);
    if (at == rows.end())
        m_problem = words;
    else if (at->problem.isEmpty())
        at->problem = words;
}

void BenchModel::work()
{
    m_answer.reset();
    m_missing.clear();
    m_problem.clear();
    const BenchTexts all = m_open == nullptr ? BenchTexts() : texts();
    if (m_open != nullptr) {
        auto rows = benchInputRows(*m_shown.voice, *m_open, all, byHand(), today());
        Result<BenchAnswer> answer = askBench(*m_open, all, m_shown.voice->units, today());
        if (answer && !answer->figures.empty())
            m_answer = std::move(answer).value();
        else if (!answer)
            refuse(answer.error(), rows);
        m_inputs.assign(std::move(rows));
    }
    draw(all);
    Q_EMIT changed();
}

void BenchModel::keep(const QString &place)
{
    const Point *point = keptOn();
    if (point == nullptr || !m_answer || isBusy())
        return;
    ++m_waiting;
    Q_EMIT changed();
    const auto act = [question = m_open, answer = *m_answer, all = texts(), units = m_shown.voice->units,
                      slug = point->slug, place = place.toStdString(), snapshot = m_shown.snapshot,
                      doer = m_desk->doer()](Logbook &book) -> Result<TypedReading> {
        const Rig &rig = snapshot->history->rig;
        const auto walk = openWalk(book, rig.id);
        if (!walk)
            return walk.error();
        if (!*walk)
            return Error{Errc::NotFound, "no walk is under way", slug, "start one"};
        const BenchFigureToKeep figure{question, &answer, all, units, slug, place};
        return keepFigure(book, *snapshot->catalogue, rig, **walk, figure, doer);
    };
    m_desk->worker->run<TypedReading>(this, act, [this](Result<TypedReading> kept) {
        --m_waiting;
        if (kept) {
            m_kept = tr("Kept on this walk: %1.").arg(Voice::text(kept->text).replace(u' ', QChar(0xa0)));
            m_desk->changed(true);
        } else {
            m_desk->refuse(kept.error());
        }
        Q_EMIT changed();
    });
}

void BenchModel::noteWheelFitted(const QString &place)
{
    if (m_shown.history() == nullptr || isBusy())
        return;
    ++m_waiting;
    Q_EMIT changed();
    const auto act = [rig = m_shown.history()->rig.id, note = place.toStdString(),
                      doer = m_desk->doer()](Logbook &book) {
        return addHappening(book, Happening{Id{}, rig, wheelFitted, book.now(), note}, doer);
    };
    m_desk->worker->run<Id>(this, act, [this](Result<Id> written) {
        --m_waiting;
        if (written)
            m_desk->changed(true);
        else
            m_desk->refuse(written.error());
        Q_EMIT changed();
    });
}

} // namespace snugwalk
