// SPDX-License-Identifier: Apache-2.0
// Walks what the window shows and its accessibility tree.
#include "screen_faults.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>
#include <vector>

#include <QAccessible>
#include <QColor>
#include <QFont>
#include <QQuickItem>
#include <QQuickWindow>

namespace snugwalk::screens {
namespace {

constexpr double slack = 1.5;        // rounding of positions and of glyphs' edges
constexpr double overlapSlack = 4.0; // lines of text have empty space above and below their letters
constexpr double largePixels = 24.0; // 18 pt, WCAG's large text
constexpr double largeBold = 18.66;  // 14 pt bold
constexpr double largeContrast = 3.0;

struct Words {
    QQuickItem *item = nullptr;
    QRectF painted; ///< in the window
    QRectF seen;    ///< what is left of it inside all that clips
    double opacity = 1.0;
};

bool isScroll(const QQuickItem &item) { return item.inherits("QQuickFlickable"); }

// What of a rectangle in the window is left inside the ancestors that clip; with `scrolled`, once all that
// scrolls was scrolled to it.
QRectF clippedBy(const QQuickItem &item, QRectF area, bool scrolled)
{
    for (const QQuickItem *up = item.parentItem(); up != nullptr; up = up->parentItem()) {
        if (scrolled && isScroll(*up))
            return area;
        if (up->clip())
            area &= up->mapRectToScene({0, 0, up->width(), up->height()});
    }
    return area;
}

bool isInScroll(const QQuickItem &item)
{
    for (const QQuickItem *up = item.parentItem(); up != nullptr; up = up->parentItem()) {
        if (isScroll(*up))
            return true;
    }
    return false;
}

double shareOf(double room, double filled, int alignment, int middle, int end)
{
    if ((alignment & middle) != 0)
        return (room - filled) / 2;
    return (alignment & end) != 0 ? room - filled : 0.0;
}

QRectF paintedRect(const QQuickItem &item)
{
    const double width = item.property("paintedWidth").toDouble();
    const double height = item.property("paintedHeight").toDouble();
    const double x = shareOf(item.width(), width, item.property("effectiveHorizontalAlignment").toInt(),
                             Qt::AlignHCenter, Qt::AlignRight);
    const double y = shareOf(item.height(), height, item.property("verticalAlignment").toInt(),
                             Qt::AlignVCenter, Qt::AlignBottom);
    return item.mapRectToScene({x, y, width, height});
}

void collect(QQuickItem &item, double opacity, std::vector<Words> &words)
{
    if (!item.isVisible() || item.opacity() == 0.0)
        return;
    opacity *= item.opacity();
    const bool isText =
        item.inherits("QQuickText") || item.inherits("QQuickTextEdit") || item.inherits("QQuickTextInput");
    if (isText && !item.property("text").toString().trimmed().isEmpty()) {
        const QRectF painted = item.inherits("QQuickText")
                                   ? paintedRect(item)
                                   : item.mapRectToScene({0, 0, item.width(), item.height()});
        words.push_back({&item, painted, clippedBy(item, painted, false), opacity});
    }
    for (QQuickItem *child : item.childItems())
        collect(*child, opacity, words);
}

QString said(const QQuickItem &item)
{
    QString text = item.property("text").toString().simplified();
    return u'"' + (text.size() > 60 ? text.left(60) + QStringLiteral("…") : text) + u'"';
}

void tellCut(const Words &one, const QRectF &window, QStringList &faults)
{
    const QQuickItem &item = *one.item;
    if (item.property("truncated").toBool())
        faults << QStringLiteral("cut off: %1").arg(said(item));
    if (!item.inherits("QQuickText"))
        return;
    // sideways nothing scrolls out of sight that is meant to be read; upright a scroll may
    QRectF room = clippedBy(item, one.painted, true) & QRectF(window.left(), -1e6, window.width(), 2e6);
    if (!isInScroll(item))
        room &= window;
    if (room.width() < one.painted.width() - slack || room.height() < one.painted.height() - slack)
        faults << QStringLiteral("outside: %1, %2 x %3 of %4 x %5 px are left")
                      .arg(said(item))
                      .arg(room.width(), 0, 'f', 0)
                      .arg(room.height(), 0, 'f', 0)
                      .arg(one.painted.width(), 0, 'f', 0)
                      .arg(one.painted.height(), 0, 'f', 0);
}

void tellOverlaps(const std::vector<Words> &words, QStringList &faults)
{
    for (std::size_t i = 0; i < words.size(); ++i) {
        for (std::size_t j = i + 1; j < words.size(); ++j) {
            const QRectF both = words[i].seen & words[j].seen;
            if (both.width() > overlapSlack && both.height() > overlapSlack)
                faults << QStringLiteral("over each other: %1 and %2, %3 x %4 px")
                              .arg(said(*words[i].item), said(*words[j].item))
                              .arg(both.width(), 0, 'f', 0)
                              .arg(both.height(), 0, 'f', 0);
        }
    }
}

// What most pixels around the letters have: the ground they stand on.
QColor groundOf(const QImage &picture, const QRectF &area)
{
    std::map<QRgb, int> counts;
    const QRect pixels = area.toAlignedRect() & picture.rect();
    for (int y = pixels.top(); y <= pixels.bottom(); ++y) {
        for (int x = pixels.left(); x <= pixels.right(); ++x)
            ++counts[picture.pixel(x, y)];
    }
    const auto most = std::max_element(counts.begin(), counts.end(),
                                       [](const auto &a, const auto &b) { return a.second < b.second; });
    return most == counts.end() ? QColor() : QColor(most->first);
}

QColor mixed(const QColor &ink, const QColor &ground, double opacity)
{
    const double share = ink.alphaF() * opacity;
    return QColor::fromRgbF(static_cast<float>(ink.redF() * share + ground.redF() * (1 - share)),
                            static_cast<float>(ink.greenF() * share + ground.greenF() * (1 - share)),
                            static_cast<float>(ink.blueF() * share + ground.blueF() * (1 - share)));
}

void tellContrast(const Words &one, const QImage &picture, double wanted, QStringList &faults)
{
    if (one.seen.width() < 2 || one.seen.height() < 2 || !one.item->isEnabled())
        return; // what cannot be pressed now is left out by WCAG 1.4.3
    const QColor ground = groundOf(picture, one.seen);
    if (!ground.isValid())
        return;
    const QFont font = one.item->property("font").value<QFont>();
    const bool isLarge = font.pixelSize() >= largePixels || (font.bold() && font.pixelSize() >= largeBold);
    const double least = isLarge && wanted <= 4.5 ? largeContrast : wanted;
    const double found =
        contrastOf(mixed(one.item->property("color").value<QColor>(), ground, one.opacity), ground);
    if (found < least)
        faults << QStringLiteral("contrast %1 of at least %2: %3")
                      .arg(found, 0, 'f', 2)
                      .arg(least, 0, 'f', 1)
                      .arg(said(*one.item));
}

bool isControl(QAccessible::Role role)
{
    static const std::set<QAccessible::Role> roles = {
        QAccessible::Button,   QAccessible::CheckBox, QAccessible::RadioButton, QAccessible::EditableText,
        QAccessible::ComboBox, QAccessible::Slider,   QAccessible::Link,        QAccessible::PageTab,
        QAccessible::MenuItem, QAccessible::SpinBox,  QAccessible::ButtonMenu};
    return roles.count(role) > 0; // a list's item is read; what is pressed in it is a control of its own
}

void collectControls(QAccessibleInterface *at, std::vector<QAccessibleInterface *> &found)
{
    if (at == nullptr || !at->isValid() || at->state().invisible)
        return;
    if (isControl(at->role()))
        found.push_back(at);
    for (int i = 0; i < at->childCount(); ++i)
        collectControls(at->child(i), found);
}

// What the Tab key reaches, once round.
std::set<const QObject *> reachedByTab(QQuickWindow &window)
{
    std::set<const QObject *> reached;
    QQuickItem *at = window.contentItem()->nextItemInFocusChain(true);
    while (at != nullptr && at != window.contentItem() && reached.insert(at).second)
        at = at->nextItemInFocusChain(true);
    return reached;
}

bool holdsReached(const QQuickItem &item, const std::set<const QObject *> &reached)
{
    if (reached.count(&item) > 0)
        return true;
    const auto children = item.childItems();
    return std::any_of(children.begin(), children.end(),
                       [&](const QQuickItem *child) { return holdsReached(*child, reached); });
}

void tellControls(QQuickWindow &window, int least, QStringList &faults)
{
    QAccessible::setActive(true);
    std::vector<QAccessibleInterface *> controls;
    collectControls(QAccessible::queryAccessibleInterface(&window), controls);
    const std::set<const QObject *> reached = reachedByTab(window);
    if (controls.empty())
        faults << QStringLiteral("no control at all");
    for (QAccessibleInterface *one : controls) {
        const auto *item = qobject_cast<const QQuickItem *>(one->object());
        if (item == nullptr || !item->isVisible())
            continue;
        const QString name = one->text(QAccessible::Name);
        const QString at = QStringLiteral("%1 at %2, %3")
                               .arg(QLatin1String(item->metaObject()->className()))
                               .arg(item->mapToScene({0, 0}).x(), 0, 'f', 0)
                               .arg(item->mapToScene({0, 0}).y(), 0, 'f', 0);
        if (name.trimmed().isEmpty())
            faults << QStringLiteral("without a name: %1").arg(at);
        if (item->width() < least - 0.5 || item->height() < least - 0.5)
            faults << QStringLiteral("small: %1 (%2), %3 x %4 of %5")
                          .arg(name, at)
                          .arg(item->width(), 0, 'f', 0)
                          .arg(item->height(), 0, 'f', 0)
                          .arg(least);
        if (item->isEnabled() && !one->state().disabled && !holdsReached(*item, reached))
            faults << QStringLiteral("not reached by Tab: %1 (%2)").arg(name, at);
    }
}

double linear(float channel)
{
    const double c = static_cast<double>(channel);
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

double luminance(const QColor &color)
{
    return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF()) + 0.0722 * linear(color.blueF());
}

} // namespace

double contrastOf(const QColor &one, const QColor &other)
{
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

QStringList faultsOf(QQuickWindow &window, const QImage &picture, const Wanted &wanted)
{
    QStringList faults;
    std::vector<Words> words;
    collect(*window.contentItem(), 1.0, words);
    const QRectF whole(0, 0, window.width(), window.height());
    for (const Words &one : words) {
        tellCut(one, whole, faults);
        tellContrast(one, picture, wanted.contrast, faults);
    }
    tellOverlaps(words, faults);
    tellControls(window, wanted.target, faults);
    return faults;
}

} // namespace snugwalk::screens
