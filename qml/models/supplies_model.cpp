// SPDX-License-Identifier: Apache-2.0
// From the list of the worker to lines, and a count back.
#include "supplies_model.hpp"

#include <algorithm>
#include <set>

#include "base/text.hpp"

namespace snugwalk {
namespace {

// Small and large amounts of one thing are told in the unit of its pack: "0 g" beside "400 g".
QString amountWords(const Voice &voice, const SupplyItem &item, double si)
{
    if (item.dimension == Dimension::Count)
        return voice.number(si, si == static_cast<double>(static_cast<long long>(si)) ? 0 : 1);
    if (si == 0.0)
        return voice.localised(formatSi(displayUnit(item.dimension, voice.units, item.packSi), 0.0, 0));
    return voice.quantity(item.dimension, si);
}

QString packWords(const Voice &voice, const SupplyItem &item)
{
    const QString word = voice.word("packs", item.packWord);
    if (item.dimension == Dimension::Count && item.packSi == 1.0)
        return word;
    return Voice::text(voice.texts.phrase(
        "supply_pack", {word.toStdString(), amountWords(voice, item, item.packSi).toStdString()}));
}

QString useWords(const Shown &shown, const SupplyItem &item, const SupplyUse &use)
{
    const Voice &voice = *shown.voice;
    QString what = voice.point(use.point);
    if (const FindingHistory *history = use.finding.isNull() ? nullptr : shown.snapshot->finding(use.finding))
        what = SuppliesModel::tr("%1: %2", "point: defect")
                   .arg(what, voice.word("defects", history->finding.defect));
    else
        what = SuppliesModel::tr("%1, due", "point").arg(what);
    const QString words =
        SuppliesModel::tr("%1, %2", "what for, how much").arg(what, amountWords(voice, item, use.si));
    return use.assumed ? words + QStringLiteral("; ") + Voice::text(voice.texts.phrase("supply_assumed"))
                       : words;
}

QString getWords(const Voice &voice, const SupplyItem &item, int packs)
{
    if (packs == 0)
        return Voice::text(voice.texts.phrase("supply_enough"));
    if (item.dimension == Dimension::Count && item.packSi == 1.0 && item.packWord == "piece")
        return SuppliesModel::tr("get %1", "how many pieces").arg(voice.number(packs, 0));
    return Voice::text(
        voice.texts.phrase("supply_buy", {std::to_string(packs), packWords(voice, item).toStdString()}));
}

} // namespace

QVariantList SuppliesModel::rows() const
{
    QVariantList list;
    const Voice &voice = *m_shown.voice;
    for (const SupplyLine &line : m_lines) {
        const SupplyItem *item = m_desk->parts->supplies->find(line.item);
        if (item == nullptr)
            continue;
        QStringList uses;
        for (const SupplyUse &use : line.uses)
            uses << useWords(m_shown, *item, use);
        list << QVariantMap{{QStringLiteral("item"), Voice::text(line.item)},
                            {QStringLiteral("name"), voice.word("supplies", line.item)},
                            {QStringLiteral("get"), getWords(voice, *item, line.packs)},
                            {QStringLiteral("needed"),
                             tr("%1 needed", "amount").arg(amountWords(voice, *item, line.neededSi))},
                            {QStringLiteral("onHand"),
                             tr("%1 on hand", "amount").arg(amountWords(voice, *item, line.onHandSi))},
                            {QStringLiteral("uses"), uses}};
    }
    return list;
}

QStringList SuppliesModel::cautions() const
{
    QStringList list;
    if (m_lines.empty())
        return list;
    std::set<std::string> codes;
    for (const SupplyLine &line : m_lines) {
        if (const SupplyItem *item = m_desk->parts->supplies->find(line.item))
            codes.insert(item->cautions.begin(), item->cautions.end());
    }
    for (const std::string &code : codes)
        list << Voice::text(m_shown.voice->texts.cautionShort(code));
    list << Voice::text(m_shown.voice->texts.phrase("supply_basis"));
    return list;
}

void SuppliesModel::show(const Shown &shown)
{
    const bool isNew = shown.snapshot != m_shown.snapshot;
    m_shown = shown;
    Q_EMIT changed();
    if (isNew && m_asked)
        open(m_days);
}

void SuppliesModel::open(int days)
{
    if (m_shown.history() == nullptr || m_desk->parts->supplies == nullptr)
        return;
    m_asked = true;
    m_days = days;
    ++m_waiting;
    Q_EMIT changed();
    const auto act = [list = m_desk->parts->supplies, snapshot = m_shown.snapshot, days](Logbook &) {
        return Result<std::vector<SupplyLine>>(
            suppliesFor(*list, *snapshot->history, snapshot->bands, snapshot->now, days));
    };
    m_desk->worker->run<std::vector<SupplyLine>>(this, act, [this](Result<std::vector<SupplyLine>> lines) {
        --m_waiting;
        if (lines)
            m_lines = std::move(lines).value();
        Q_EMIT changed();
    });
}

void SuppliesModel::setOnHand(const QString &item, const QString &amount)
{
    const SupplyItem *known = m_desk->parts->supplies->find(item.toStdString());
    const auto refuse = [&] {
        m_desk->refuse({Errc::InvalidInput, "the amount is not understood", amount.toStdString(),
                        "write it as 2 cartridges, 450 mL or 12"});
    };
    const Result<std::string> plain = m_shown.voice->plain(amount.trimmed());
    if (!plain) {
        m_desk->refuse(plain.error());
        return;
    }
    const std::size_t end = std::min(plain->find_first_not_of("0123456789."), plain->size());
    const std::optional<double> quantity = parseDouble(plain->substr(0, end));
    if (known == nullptr || !quantity || m_shown.history() == nullptr)
        return refuse();
    const auto si = amountOf(*known, *quantity, trim(std::string_view(*plain).substr(end)));
    if (!si)
        return refuse();
    Stock stock;
    stock.rig = m_shown.history()->rig.id;
    stock.item = known->slug;
    stock.dimension = known->dimension;
    stock.si = *si;
    stock.unit = known->unit;
    const auto act = [stock, doer = m_desk->doer()](Logbook &book) mutable {
        stock.at = doer.at.value_or(book.now());
        stock.by = doer.by;
        return setStock(book, stock, doer);
    };
    m_desk->worker->run<Id>(this, act, [this](Result<Id> counted) {
        if (!counted)
            m_desk->refuse(counted.error());
        m_desk->changed(true);
    });
}

} // namespace snugwalk
