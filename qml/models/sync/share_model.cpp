// SPDX-License-Identifier: Apache-2.0
// Each step is the worker's; what is shown stands until the next.
#include "share_model.hpp"

#include <algorithm>

#include "share_words.hpp"
#include "sync/words.hpp"
#include "sync_words.hpp"

namespace snugwalk {
namespace {

constexpr std::chrono::minutes offerStands{10}; // as core/sync/enroll.cpp makes it

QString spaced(const std::string &code)
{
    const QString digits = Voice::text(code);
    return digits.left(3) + QChar(0xa0) + digits.mid(3);
}

} // namespace

ShareModel::ShareModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk) {}

void ShareModel::show(const Shown &shown)
{
    m_shown = shown;
    Q_EMIT changed();
}

QString ShareModel::device() const { return m_answer ? Voice::text(m_answer->name) : QString(); }

QString ShareModel::role() const { return m_given ? roleText(m_given->role) : QString(); }

QString ShareModel::wanted() const { return m_answer ? roleText(m_answer->role) : QString(); }

QVariantList ShareModel::roles() const { return roleChoices(); }

QString ShareModel::rigName() const
{
    return m_shown.history() != nullptr ? Voice::text(m_shown.history()->rig.name) : QString();
}

void ShareModel::refuse(const Error &error)
{
    m_fault = syncFault(error);
    Q_EMIT changed();
}

void ShareModel::stepTo(const char *step)
{
    m_step = QLatin1String(step);
    Q_EMIT changed();
}

template <typename T, typename Job, typename Then>
void ShareModel::run(Job job, Then then)
{
    if (m_busy)
        return;
    m_busy = true;
    m_fault.clear();
    Q_EMIT changed();
    m_desk->worker->run<T>(this, std::move(job), [this, then = std::move(then)](Result<T> answer) {
        m_busy = false;
        if (answer)
            then(*answer);
        else
            refuse(answer.error());
        Q_EMIT changed();
    });
}

void ShareModel::showBytes(const std::string &bytes)
{
    m_words = numberedWords(Voice::text(wordsFrom(bytes)));
    m_picture.clear();
    if (!m_desk->parts->qrRows)
        return;
    for (const std::string &row : m_desk->parts->qrRows(bytes))
        m_picture << Voice::text(row);
}

std::optional<NewDevice> ShareModel::chosen(const QString &role, const QString &until)
{
    NewDevice device;
    const auto known = syncRoleOf(role.toStdString());
    device.role = known.value_or(SyncRole::Viewer);
    device.until = until.trimmed().toStdString();
    if (known && (device.until.empty() || parseDate(device.until)))
        return device;
    refuse({Errc::InvalidInput, until.toStdString(), "until", ""});
    return std::nullopt;
}

void ShareModel::offer(const QString &role, const QString &until)
{
    if (m_shown.history() == nullptr || m_busy)
        return;
    clear();
    m_given = chosen(role, until);
    if (!m_given)
        return;
    const auto job = [rig = m_shown.history()->rig.id](Logbook &book) -> Result<std::pair<Offer, LocalTime>> {
        const Keys keys(book.device());
        const auto rigs = sharedRigs(book);
        if (!rigs)
            return rigs.error();
        const bool isShared =
            std::any_of(rigs->begin(), rigs->end(), [&](const auto &one) { return one.first == rig; });
        if (!isShared)
            SNUG_TRY(shareRig(book, keys, rig));
        auto offer = makeOffer(book, keys, rig);
        if (!offer)
            return offer.error();
        LocalTime end = book.now();
        end.instant += offerStands;
        return std::pair(std::move(offer).value(), end);
    };
    run<std::pair<Offer, LocalTime>>(job, [this](const std::pair<Offer, LocalTime> &made) {
        m_offer = made.first;
        m_until = m_shown.voice->time(made.second);
        showBytes(m_offer->bytes);
        m_step = QStringLiteral("offer");
        Q_EMIT acted();
    });
}

void ShareModel::takeAnswer(const QString &words)
{
    if (!m_offer)
        return;
    const auto job = [offer = *m_offer, typed = words.toStdString()](Logbook &book) -> Result<Answered> {
        const auto bytes = bytesFromWords(typed);
        if (!bytes)
            return bytes.error();
        const auto device = readAnswer(offer, *bytes, book.now());
        if (!device)
            return device.error();
        const std::string code = confirmCode(offer.bytes, *bytes);
        if (code.empty())
            return Error{Errc::Io, "no memory for the six digits", "memory", ""};
        return Answered{*bytes, code, *device};
    };
    run<Answered>(job, [this](const Answered &answered) {
        m_answer = answered.device;
        m_code = spaced(answered.code);
        m_step = QStringLiteral("compare");
    });
}

void ShareModel::confirm()
{
    if (m_step != QStringLiteral("compare") || m_shown.history() == nullptr)
        return;
    NewDevice device = *m_answer;
    device.role = m_given->role;
    device.until = m_given->until;
    const auto job = [device, rig = m_shown.history()->rig.id](Logbook &book) {
        return enrollDevice(book, Keys(book.device()), rig, device);
    };
    run<std::monostate>(job, [this](std::monostate) {
        m_offer.reset();
        m_picture.clear();
        m_words.clear();
        m_step = QStringLiteral("enrolled");
        Q_EMIT acted();
    });
}

void ShareModel::answer(const QString &words, const QString &role)
{
    const auto wanted = syncRoleOf(role.toStdString()).value_or(SyncRole::Viewer);
    const auto job = [wanted, typed = words.toStdString()](Logbook &book) -> Result<Answered> {
        const auto offer = bytesFromWords(typed);
        if (!offer)
            return offer.error();
        const auto answer = answerOffer(book, Keys(book.device()), *offer, wanted);
        if (!answer)
            return answer.error();
        const std::string code = confirmCode(*offer, *answer);
        if (code.empty())
            return Error{Errc::Io, "no memory for the six digits", "memory", ""};
        return Answered{*answer, code, {}};
    };
    run<Answered>(job, [this](const Answered &answered) {
        m_code = spaced(answered.code);
        showBytes(answered.answer);
        m_step = QStringLiteral("answered");
        Q_EMIT acted();
    });
}

void ShareModel::clear()
{
    if (m_busy)
        return;
    m_offer.reset();
    m_given.reset();
    m_answer.reset();
    m_picture.clear();
    m_words.clear();
    m_code.clear();
    m_until.clear();
    m_fault.clear();
    stepTo("");
}

} // namespace snugwalk
