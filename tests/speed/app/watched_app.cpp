// SPDX-License-Identifier: Apache-2.0
// Timing every event from outside, and telling what came of it.
#include "watched_app.hpp"

#include <algorithm>
#include <cstdio>
#include <ctime>

#include <QMetaEnum>
#include <QQuickWindow>
#include <QThread>

namespace snugwalk::speed {
namespace {

constexpr double pause = 1.0; // ms without an event: the thread had nothing to do
constexpr int placesTold = 8;

double cpuNow()
{
    timespec at{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &at);
    return static_cast<double>(at.tv_sec) * 1e3 + static_cast<double>(at.tv_nsec) * 1e-6;
}

QString nameOf(QEvent::Type type)
{
    const char *key = QMetaEnum::fromType<QEvent::Type>().valueToKey(type);
    return key == nullptr ? QString::number(type) : QString::fromLatin1(key);
}

std::vector<double> walls(const std::vector<Burst> &bursts)
{
    std::vector<double> all;
    for (const Burst &one : bursts)
        all.push_back(one.wall);
    return all;
}

} // namespace

bool WatchedApp::notify(QObject *receiver, QEvent *event)
{
    if (QThread::currentThread() != thread() || m_depth > 0) // other threads' events pass here too
        return QGuiApplication::notify(receiver, event);
    const double from = clock();
    const double cpuFrom = cpuNow();
    if (from - m_end > pause)
        close();
    const QEvent::Type type = event->type();
    const QString who = QString::fromLatin1(receiver->metaObject()->className()); // it may go in the event
    if (type == QEvent::MouseButtonRelease)
        m_release = from;
    ++m_depth;
    const bool taken = QGuiApplication::notify(receiver, event);
    --m_depth;
    m_end = clock();
    m_open.wall += m_end - from;
    m_open.cpu += cpuNow() - cpuFrom;
    m_open.during = m_doing;
    if (m_end - from > m_longest) {
        m_longest = m_end - from;
        m_open.by = who + QLatin1Char(' ') + nameOf(type);
    }
    if (std::exchange(m_shown, false)) {
        m_open.frame = true;
        close();
    }
    return taken;
}

void WatchedApp::watch(QQuickWindow &window)
{
    connect(&window, &QQuickWindow::frameSwapped, this, [this] {
        m_shown = true;
        m_frame = clock();
    });
}

void WatchedApp::close()
{
    if (m_open.wall > 0.0)
        m_bursts.push_back(std::move(m_open));
    m_open = {};
    m_longest = 0.0;
}

std::vector<Burst> WatchedApp::take()
{
    close();
    return std::exchange(m_bursts, {});
}

double quantile(std::vector<double> values, double share)
{
    if (values.empty())
        return 0.0;
    std::sort(values.begin(), values.end());
    const double at = share * static_cast<double>(values.size() - 1);
    return values[static_cast<std::size_t>(at + 0.5)];
}

void tell(const char *what, std::vector<Burst> bursts, double most)
{
    std::sort(bursts.begin(), bursts.end(), [](const Burst &a, const Burst &b) { return a.wall > b.wall; });
    const auto over = [&](double Burst::*part) {
        return std::count_if(bursts.begin(), bursts.end(), [&](const Burst &b) { return b.*part > most; });
    };
    std::vector<double> cpus;
    for (const Burst &one : bursts)
        cpus.push_back(one.cpu);
    std::printf("%-34s %5zu: median %6.1f ms, 95 %% %6.1f, worst %6.1f; over %.0f ms: %ld by the clock\n",
                what, bursts.size(), quantile(walls(bursts), 0.5), quantile(walls(bursts), 0.95),
                quantile(walls(bursts), 1.0), most, static_cast<long>(over(&Burst::wall)));
    std::printf(
        "%-34s        median %6.1f ms, 95 %% %6.1f, worst %6.1f; over %.0f ms: %ld of the processor\n", "",
        quantile(cpus, 0.5), quantile(cpus, 0.95), quantile(cpus, 1.0), most,
        static_cast<long>(over(&Burst::cpu)));
    int told = 0;
    for (const Burst &one : bursts) {
        if (one.wall <= most || ++told > placesTold)
            break;
        std::printf("    %6.1f ms (%.1f of the processor): %s, %s\n", one.wall, one.cpu,
                    qPrintable(one.during), qPrintable(one.by));
    }
    std::fflush(stdout);
}

void tellFrames(const QString &what, const std::vector<Burst> &bursts)
{
    std::vector<Burst> shown;
    std::vector<Burst> unseen;
    for (const Burst &one : bursts)
        (one.frame ? shown : unseen).push_back(one);
    tell(qPrintable(what + QStringLiteral(", frames")), shown, slowFrame);
    tell("  other work, without a frame", unseen, slowFrame);
}

} // namespace snugwalk::speed
