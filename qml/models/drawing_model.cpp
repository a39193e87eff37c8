// SPDX-License-Identifier: Apache-2.0
// Drawing, erasing, taking back, and writing it down.
#include "drawing_model.hpp"

#include <algorithm>

#include "logbook/acts_photo.hpp"

namespace snugwalk {
namespace {

const FindingHistory *historyOf(const Shown &shown, const Photo &photo)
{
    return shown.snapshot->finding(photo.finding);
}

double aspectOf(const Photo &photo)
{
    const ImageSize size = upright({photo.width, photo.height}, photo.orientation);
    return size.height > 0 ? static_cast<double>(size.width) / size.height : 4.0 / 3.0;
}

Result<Length> parseRuler(const Voice &voice, const QString &text, std::string_view unit)
{
    const Result<double> si = voice.typed(Dimension::Length, text, findUnit(Dimension::Length, unit));
    if (!si)
        return si.error();
    if (*si <= 0.0)
        return Error{Errc::OutOfRange, "a length of nothing", text.toStdString(),
                     "type the length between the two ends"};
    return Length::fromSi(*si);
}

QString firstPhoto(const Shown &shown)
{
    for (const OpenFinding &open : shown.snapshot->state.open) {
        const FindingHistory *history = shown.snapshot->finding(open.id);
        if (history != nullptr && !history->photos.empty())
            return Voice::text(history->photos.back().hash);
    }
    return {};
}

} // namespace

DrawingModel::DrawingModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk) {}

const Photo *DrawingModel::kept(const QString &hash) const
{
    const std::string wanted = hash.toStdString();
    const Photo *newest = nullptr;
    if (m_shown.history() == nullptr)
        return newest;
    for (const FindingHistory &history : m_shown.history()->findings) {
        for (const Photo &photo : history.photos) {
            if (photo.hash == wanted)
                newest = &photo;
        }
    }
    return newest;
}

void DrawingModel::show(const Shown &shown)
{
    m_shown = shown;
    // What was drawn since is as new as what was read, or newer.
    if (m_waiting == 0 && shown.history() != nullptr) {
        std::erase_if(m_lines, [](const auto &entry) { return !entry.first.contains(u':'); });
        for (const FindingHistory &history : shown.history()->findings) {
            for (const Drawing &drawing : history.drawings) {
                for (const Photo &photo : history.photos) {
                    if (photo.id == drawing.photo)
                        m_lines[Voice::text(photo.hash)] = {drawing.shapes, aspectOf(photo)};
                }
            }
        }
    }
    Q_EMIT opened();
    Q_EMIT changed();
}

QVariantMap DrawingModel::drawn() const
{
    QVariantMap map;
    for (const auto &[photo, lines] : m_lines) {
        if (!lines.shapes.empty())
            map[photo] = shapeMaps(*m_shown.voice, lines.shapes);
    }
    return map;
}

QString DrawingModel::words() const
{
    const Photo *photo = kept(m_photo);
    const FindingHistory *history = photo == nullptr ? nullptr : historyOf(m_shown, *photo);
    if (history == nullptr)
        return {};
    const Voice &voice = *m_shown.voice;
    return tr("%1, %2", "what a photo shows, date")
        .arg(voice.point(history->finding.point), voice.date(photo->taken.value_or(photo->added)));
}

QVariantList DrawingModel::shapes() const
{
    const auto lines = m_lines.find(m_photo);
    return lines == m_lines.end() ? QVariantList() : shapeMaps(*m_shown.voice, lines->second.shapes);
}

bool DrawingModel::isScaled() const
{
    const auto lines = m_lines.find(m_photo);
    return lines != m_lines.end() &&
           std::any_of(lines->second.shapes.begin(), lines->second.shapes.end(),
                       [](const DrawnShape &shape) { return shape.length.has_value(); });
}

void DrawingModel::open(const QString &photo)
{
    m_photo = photo.isEmpty() ? firstPhoto(m_shown) : photo;
    m_before.clear();
    note({});
    Q_EMIT opened();
    Q_EMIT changed();
}

void DrawingModel::note(const QString &problem)
{
    m_problem = problem;
    Q_EMIT problemChanged();
}

// The length of a ruler as typed, or by ratio from one that is known; an `Error` has words for neither.
std::optional<Length> DrawingModel::readLength(DrawnShape &ruler, const QString &typed)
{
    const QString text = typed.trimmed();
    if (text.isEmpty()) {
        const Lines &lines = at(m_photo);
        const Drawing drawing{{}, {}, lines.shapes, {}, {}};
        const Result<Length> told = measure(drawing, ruler.x1, ruler.y1, ruler.x2, ruler.y2, lines.aspect);
        if (!told)
            note(tr("Type the length first, such as 120 mm or 4 3/4 in."));
        ruler.text = byRatio;
        return told ? std::optional(*told) : std::nullopt;
    }
    const bool us = m_shown.voice->units == UnitSystem::Us;
    const Result<Length> length = parseRuler(*m_shown.voice, text, us ? "in" : "mm");
    if (!length)
        note(tr("Not understood: %1. Write it for example as 120 mm or 4 3/4 in.").arg(text));
    return length ? std::optional(*length) : std::nullopt;
}

void DrawingModel::add(const QString &kind, double x1, double y1, double x2, double y2, double aspect,
                       const QString &length)
{
    const auto known = readShapeKind(kind);
    const auto share = [](double v) { return std::clamp(v, 0.0, 1.0); };
    if (m_photo.isEmpty() || !known)
        return;
    note({});
    Lines &lines = at(m_photo);
    if (kept(m_photo) == nullptr && aspect > 0.0)
        lines.aspect = aspect;
    DrawnShape shape{*known, share(x1), share(y1), share(x2), share(y2), std::nullopt, {}};
    if (shape.x1 == shape.x2 && shape.y1 == shape.y2)
        return;
    if (*known == ShapeKind::Ruler) {
        shape.length = readLength(shape, length);
        if (!shape.length)
            return;
    }
    std::vector<DrawnShape> shapes = lines.shapes;
    m_before.push_back(shapes);
    shapes.push_back(std::move(shape));
    put(std::move(shapes));
}

void DrawingModel::eraseLast()
{
    std::vector<DrawnShape> shapes = at(m_photo).shapes;
    if (shapes.empty())
        return;
    m_before.push_back(shapes);
    shapes.pop_back();
    put(std::move(shapes));
}

void DrawingModel::eraseAll()
{
    if (at(m_photo).shapes.empty())
        return;
    m_before.push_back(at(m_photo).shapes);
    put({});
}

void DrawingModel::undo()
{
    if (m_before.empty())
        return;
    std::vector<DrawnShape> shapes = std::move(m_before.back());
    m_before.pop_back();
    put(std::move(shapes));
}

QVariantList DrawingModel::linesOf(const QString &file) const
{
    const auto lines = m_lines.find(file);
    return lines == m_lines.end() ? QVariantList() : shapeMaps(*m_shown.voice, lines->second.shapes);
}

void DrawingModel::put(std::vector<DrawnShape> shapes)
{
    const std::vector<DrawnShape> wanted = shapes;
    Lines &lines = at(m_photo);
    lines.shapes = std::move(shapes);
    const Photo *photo = kept(m_photo);
    if (photo == nullptr) {
        Q_EMIT changed();
        return;
    }
    lines.aspect = aspectOf(*photo);
    Q_EMIT changed();
    ++m_waiting;
    const auto act = [id = photo->id, wanted, doer = m_desk->doer()](Logbook &book) {
        return saveDrawing(book, id, wanted, doer);
    };
    m_desk->worker->run<Id>(this, act, [this](Result<Id> saved) {
        --m_waiting;
        if (!saved)
            m_desk->refuse(saved.error());
        else
            Q_EMIT written();
        m_desk->changed(!saved.has_value());
    });
}

} // namespace snugwalk
