// SPDX-License-Identifier: Apache-2.0
// An application that knows how long its thread was kept, by what, and what each frame cost.
#pragma once

#include <functional>
#include <vector>

#include <QElapsedTimer>
#include <QGuiApplication>

class QQuickWindow;

namespace snugwalk::speed {

constexpr double slowFrame = 33.0; ///< ms, the goal for a frame
constexpr double longBlock =
    16.0; ///< ms, the goal for a block of the thread that draws while a file comes in

/// Work of the thread that draws, without a pause. A frame is all that was done since the frame before or
/// since the thread last had nothing to do, up to the moment the picture is shown.
struct Burst {
    double wall = 0.0; ///< ms
    double cpu = 0.0;  ///< ms of the processor on this thread: what other programs take is not in it
    bool frame = false;
    QString during; ///< what the person was doing
    QString by;     ///< the one event of it that took longest
};

/// Every event goes through `notify`; what is done between two events is the driver's own.
class WatchedApp : public QGuiApplication {
public:
    using QGuiApplication::QGuiApplication;

    bool notify(QObject *receiver, QEvent *event) override;
    /// Frames of this window count from now on.
    void watch(QQuickWindow &window);
    /// What follows is for this.
    void nowDoing(const QString &what) { m_doing = what; }
    /// Gives what was seen so far and begins anew.
    [[nodiscard]] std::vector<Burst> take();

    /// Ms on the clock of `since`.
    [[nodiscard]] double clock() const { return static_cast<double>(m_clock.nsecsElapsed()) * 1e-6; }
    /// When a finger last left the screen, and when a picture was last shown.
    [[nodiscard]] double lastRelease() const { return m_release; }
    [[nodiscard]] double lastFrame() const { return m_frame; }

private:
    void close();

    QElapsedTimer m_clock = [] {
        QElapsedTimer timer;
        timer.start();
        return timer;
    }();
    std::vector<Burst> m_bursts;
    Burst m_open;
    QString m_doing;
    double m_longest = 0.0; ///< of the events in the open burst
    double m_end = 0.0;     ///< of the last event
    double m_release = 0.0;
    double m_frame = 0.0;
    int m_depth = 0;
    bool m_shown = false; ///< within this event a picture was shown
};

/// Median, 95 %, worst, and how many were over `most` ms and where.
void tell(const char *what, std::vector<Burst> bursts, double most);
/// The same of frames against `slowFrame`, and of what was done without one and would hold up the next.
void tellFrames(const QString &what, const std::vector<Burst> &bursts);
[[nodiscard]] double quantile(std::vector<double> values, double share);

} // namespace snugwalk::speed
