// SPDX-License-Identifier: Apache-2.0
// Words go out once and are kept nowhere; words that come in name the rig at a store.
#include "paper_model.hpp"

#include "base/time.hpp"
#include "logbook/receive.hpp"
#include "share_words.hpp"
#include "sync/recover.hpp"
#include "sync/words.hpp"
#include "sync_words.hpp"

namespace snugwalk {
namespace {

struct Sheet {
    std::string words;
    std::string mark;
};

struct Regained {
    std::string mark;
    bool isCompared = false;
};

Result<Regained> regain(Logbook &book, SyncPlaces &places, const std::string &store, const std::string &words,
                        const std::string &mark)
{
    const auto printed = keyFromWords(words);
    const auto opened = printed ? places.open(store) : Result<OpenedPlace>(printed.error());
    if (!opened)
        return opened.error();
    auto found = rigsOwnedBy(*opened->store, *printed);
    if (!found)
        return found.error();
    const auto rig = rigOfMark(std::move(found).value(), mark, store);
    if (!rig)
        return rig.error();
    SNUG_TRY(recoverRig(book, Keys(book.device()), *printed, *rig));
    return Regained{rigMark(rig->root), !mark.empty()};
}

} // namespace

PaperModel::PaperModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk) {}

PaperModel::~PaperModel() = default;

void PaperModel::show(const Shown &shown)
{
    m_shown = shown;
    Q_EMIT changed();
}

QString PaperModel::rigName() const
{
    return m_shown.history() != nullptr ? Voice::text(m_shown.history()->rig.name) : QString();
}

template <typename T, typename Job, typename Then>
void PaperModel::run(Worker &worker, Job job, Then then)
{
    clear();
    m_busy = true;
    Q_EMIT changed();
    worker.run<T>(this, std::move(job), [this, then = std::move(then)](const Result<T> &answer) {
        m_busy = false;
        if (answer)
            then(*answer);
        else
            m_fault = syncFault(answer.error());
        Q_EMIT changed();
        if (answer)
            Q_EMIT acted();
    });
}

void PaperModel::make()
{
    if (m_busy || m_shown.history() == nullptr)
        return;
    const auto job = [rig = m_shown.history()->rig.id,
                      name = tr("key on paper of %1", "date")
                                 .arg(m_shown.voice->date(m_desk->parts->clock->now()))
                                 .toStdString()](Logbook &book) -> Result<Sheet> {
        const auto root = rootOf(book, rig);
        if (!root)
            return root.error();
        const auto words = enrollPaperOwner(book, Keys(book.device()), rig, name);
        return words ? Result<Sheet>(Sheet{*words, rigMark(*root)}) : words.error();
    };
    run<Sheet>(*m_desk->worker, job, [this](const Sheet &sheet) {
        m_words = numberedWords(Voice::text(sheet.words));
        m_mark = numberedWords(Voice::text(sheet.mark));
        m_step = QStringLiteral("written");
    });
}

void PaperModel::recover(const QString &store, const QString &words, const QString &mark)
{
    if (m_busy || m_desk->parts->places == nullptr)
        return;
    if (!m_beside) // a server may take minutes, and taps do not wait
        m_beside = std::make_unique<Worker>(m_desk->parts->openBook);
    const auto job = [places = m_desk->parts->places, name = store.toStdString(), typed = words.toStdString(),
                      seen = mark.trimmed().toStdString()](Logbook &book) {
        return regain(book, *places, name, typed, seen);
    };
    run<Regained>(*m_beside, job, [this](const Regained &regained) {
        m_mark = numberedWords(Voice::text(regained.mark));
        m_compared = regained.isCompared;
        m_step = QStringLiteral("owner");
    });
}

void PaperModel::clear()
{
    if (m_busy)
        return;
    m_fault.clear();
    m_step.clear();
    m_words.clear();
    m_mark.clear();
    m_compared = false;
    Q_EMIT changed();
}

} // namespace snugwalk
