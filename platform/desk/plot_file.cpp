// SPDX-License-Identifier: Apache-2.0
// One drawing, three kinds of bytes.
#include "desk/plot_file.hpp"

#include <cmath>

#include <QBuffer>
#include <QFont>
#include <QFontMetricsF>
#include <QImage>
#include <QPainter>
#include <QSvgRenderer>

#include "html/drawing_svg.hpp"
#include "html/plot_svg.hpp"
#include "report/plot/plots.hpp"

namespace snugwalk {
namespace {

constexpr int pixelsWide = 2000; // sharp on paper up to the width of a sheet

// As wide as the letters it will be drawn in here; where they are missing Qt measures what stands in.
WordWidth measured(double letter)
{
    QFont font(QString::fromLatin1(html::svgFonts));
    font.setPixelSize(static_cast<int>(letter));
    QFont heavy = font;
    heavy.setBold(true);
    return [plain = QFontMetricsF(font), bold = QFontMetricsF(heavy)](const std::string &text, bool isBold) {
        return (isBold ? bold : plain).horizontalAdvance(QString::fromStdString(text)) + 1.0;
    };
}

Result<std::string> picture(const std::string &svg)
{
    QSvgRenderer renderer(QByteArray::fromStdString(svg));
    const QSizeF size = renderer.viewBoxF().size();
    if (!renderer.isValid() || size.isEmpty())
        return Error{Errc::Corrupt, "the plot could not be drawn", "", "take another kind of file"};
    QImage image(pixelsWide, static_cast<int>(std::lround(pixelsWide * size.height() / size.width())),
                 QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    renderer.render(&painter);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly) || !image.save(&buffer, "PNG"))
        return Error{Errc::Io, "the picture could not be written", "", "take another kind of file"};
    return bytes.toStdString();
}

} // namespace

Result<std::string> plotFile(const Plot &plot, const std::string &ending)
{
    if (ending == "csv")
        return csvText(plotTable(plot));
    html::PlotLook look;
    look.titled = true;
    look.wordWidth = measured(look.size.letter);
    const std::string svg = html::plotSvg(plot, look);
    if (ending == "svg")
        return svg;
    if (ending == "png")
        return picture(svg);
    return Error{Errc::Unsupported, "no such kind of file", ending, "take png, svg or csv"};
}

} // namespace snugwalk
