// SPDX-License-Identifier: Apache-2.0
// Sentences about stores, devices and exchanges.
#include "sync_words.hpp"

#include <algorithm>

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Sync)
public:
    static QString about(SyncRole role);
    static QStringList damage(const ExchangeSummary &summary);
};

int number(std::int64_t count) { return static_cast<int>(std::min<std::int64_t>(count, 1'000'000'000)); }

QString Words::about(SyncRole role)
{
    switch (role) {
    case SyncRole::Owner:
        return tr("writes everything, enrolls and revokes devices");
    case SyncRole::Helper:
        return tr("walks, marks and mends; decides no acceptance and no points");
    case SyncRole::Technician:
        return tr("walks, reports and mends; licensed work only with a certificate number");
    case SyncRole::Viewer:
        break;
    }
    return tr("reads everything, writes nothing");
}

QStringList Words::damage(const ExchangeSummary &s)
{
    QStringList list;
    if (s.damaged > 0)
        list << tr("%n file(s) of the store are damaged and were left out.", nullptr, number(s.damaged));
    if (s.gaps > 0)
        list << tr("%n file(s) are known to be missing: another device still has to bring them.", nullptr,
                   number(s.gaps));
    if (s.unopened > 0)
        list << tr("%n file(s) cannot be opened here yet: they are kept.", nullptr, number(s.unopened));
    if (s.forked)
        list << tr("A copy of this logbook went on elsewhere: both ways are kept.");
    return list;
}

bool isOwner(const SyncState &state) { return state.role == SyncRole::Owner; }

} // namespace

QString roleText(SyncRole role)
{
    switch (role) {
    case SyncRole::Owner:
        return Words::tr("owner", "role of a device");
    case SyncRole::Helper:
        return Words::tr("helper", "role of a device");
    case SyncRole::Technician:
        return Words::tr("technician", "role of a device");
    case SyncRole::Viewer:
        break;
    }
    return Words::tr("viewer", "role of a device");
}

QVariantList roleChoices()
{
    QVariantList list;
    for (const SyncRole role : {SyncRole::Owner, SyncRole::Helper, SyncRole::Technician, SyncRole::Viewer})
        list << QVariantMap{{QStringLiteral("slug"), Voice::text(slugOf(role))},
                            {QStringLiteral("name"), roleText(role)},
                            {QStringLiteral("about"), Words::about(role)}};
    return list;
}

QStringList waitingLines(const SyncState &state)
{
    QStringList list;
    if (state.unsent > 0)
        list << Words::tr("%n entry(ies) wait to be sent.", nullptr, number(state.unsent));
    if (!state.elsewhere.empty())
        list << Words::tr("%n photo(s) are still on another device.", nullptr,
                          number(static_cast<std::int64_t>(state.elsewhere.size())));
    if (!state.conflicts.empty())
        list << Words::tr("%n thing(s) were written differently by two people.", nullptr,
                          number(static_cast<std::int64_t>(state.conflicts.size())));
    if (!state.aside.empty())
        list << Words::tr("%n entry(ies) were set aside.", nullptr,
                          number(static_cast<std::int64_t>(state.aside.size())));
    if (state.joining)
        list << Words::tr(
            "A rig shared with this device has not arrived yet: exchange with a store that has it.");
    return list;
}

QString waitingMark(const SyncState &state)
{
    std::int64_t count = state.unsent + static_cast<std::int64_t>(state.conflicts.size());
    if (isOwner(state))
        count += static_cast<std::int64_t>(state.aside.size());
    if (count > 0)
        return Words::tr("%n wait(s)", "mark beside the word Logbook", number(count));
    return state.joining ? Words::tr("a rig waits", "mark beside the word Logbook") : QString();
}

QStringList exchangeOutcome(const ExchangeSummary &s)
{
    const QString sent = Words::tr("%n entry(ies) sent", nullptr, number(s.entriesSent));
    const QString received = Words::tr("%n received", "entries", number(s.entriesReceived));
    QStringList list{s.entriesSent + s.entriesReceived == 0
                         ? Words::tr("Both have the same entries.")
                         : Words::tr("%1, %2.", "entries sent, received").arg(sent, received)};
    if (s.photosSent > 0)
        list << Words::tr("%n photo(s) sent.", nullptr, number(s.photosSent));
    if (s.photosReceived > 0)
        list << Words::tr("%n photo(s) received.", nullptr, number(s.photosReceived));
    if (s.thumbnailsReceived > 0)
        list << Words::tr("%n small picture(s) of photos received.", nullptr, number(s.thumbnailsReceived));
    if (s.photosLeft > 0)
        list << Words::tr("%n photo(s) are still on another device.", nullptr, number(s.photosLeft));
    if (s.filesForwarded > 0)
        list << Words::tr("%n file(s) of other devices were carried on.", nullptr, number(s.filesForwarded));
    if (s.conflicts > 0)
        list << Words::tr("%n thing(s) were written differently by two people.", nullptr,
                          number(s.conflicts));
    if (s.aside > 0)
        list << Words::tr("%n entry(ies) were set aside.", nullptr, number(s.aside));
    return list + Words::damage(s);
}

QString askedText(std::int64_t count)
{
    return Words::tr("%n original(s) come with the next exchange with a store that has them.", nullptr,
                     number(count));
}

QString exchangeProgress(const std::string &what, std::int64_t done, std::int64_t of)
{
    if (of <= 0)
        return Words::tr("looking at the store …");
    const QString share = Words::tr("%1 of %2", "done, all").arg(done).arg(of);
    if (what == "photos")
        return Words::tr("photos: %1", "done of all").arg(share);
    return what == "entries" ? Words::tr("files of entries: %1", "done of all").arg(share)
                             : Words::tr("records of devices: %1", "done of all").arg(share);
}

QVariantMap storeRow(const Voice &voice, const KnownStore &store, bool shared)
{
    const SyncPlace &place = store.place;
    const QString last = place.met
                             ? Words::tr("last exchange %1", "date and time").arg(voice.dateTime(*place.met))
                             : Words::tr("no exchange yet");
    const bool isCounted = shared && (!place.met || place.carried);
    const QString waits = !isCounted           ? QString()
                          : store.waiting == 0 ? Words::tr("nothing new since")
                          : place.met
                              ? Words::tr("%n new entry(ies) since", nullptr, number(store.waiting))
                              : Words::tr("%n entry(ies) to leave there", nullptr, number(store.waiting));
    const QString kind = place.kind == "folder"   ? Words::tr("folder", "kind of store")
                         : place.kind == "webdav" ? Words::tr("WebDAV address", "kind of store")
                         : place.kind == "file"   ? Words::tr("file to hand over", "kind of store")
                                                  : Voice::text(place.kind);
    return {{QStringLiteral("name"), Voice::text(place.name)},
            {QStringLiteral("where"), Voice::text(place.where)},
            {QStringLiteral("kind"), kind},
            {QStringLiteral("last"), last},
            {QStringLiteral("waits"), waits}};
}

QVariantMap deviceRow(const Voice &voice, const SyncState &state, const Member &member)
{
    const bool isSelf = member.device == state.self;
    const auto role = member.role();
    const auto until = parseDate(member.accessUntil);
    const auto owners = std::count_if(state.members.begin(), state.members.end(),
                                      [](const Member &m) { return m.role() == SyncRole::Owner; });
    const bool isLastOwner = role == SyncRole::Owner && owners == 1;
    QString name = member.name.empty() ? Voice::text(member.device.shortText()) : Voice::text(member.name);
    if (isSelf)
        name = Words::tr("%1 (this device)", "name of a device").arg(name);
    return {
        {QStringLiteral("id"), Voice::text(member.device.text())},
        {QStringLiteral("name"), name},
        {QStringLiteral("role"), role ? roleText(*role) : Words::tr("revoked", "a device")},
        {QStringLiteral("since"), Words::tr("since %1", "date").arg(voice.date(member.since))},
        {QStringLiteral("until"), until ? Words::tr("until %1", "date").arg(voice.date(*until)) : QString()},
        {QStringLiteral("revoked"), !role.has_value()},
        {QStringLiteral("note"), Voice::text(member.reason)},
        {QStringLiteral("revocable"), isOwner(state) && role && !isSelf && !isLastOwner}};
}

QString standingText(const SyncState &state)
{
    if (state.rig.isNull())
        return {};
    if (!state.shared)
        return Words::tr("This rig's logbook is on this device only.");
    if (!state.role) {
        const bool wasHere = std::any_of(state.members.begin(), state.members.end(),
                                         [&](const Member &m) { return m.device == state.self; });
        return wasHere ? Words::tr("This device was revoked: what is written here stays here.")
                       : Words::tr("This device waits to be enrolled by an owner.");
    }
    return Words::tr("This device is enrolled as %1.", "role").arg(roleText(*state.role));
}

} // namespace snugwalk
