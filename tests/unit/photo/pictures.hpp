// SPDX-License-Identifier: Apache-2.0
// Pictures made and read by the plain libraries, apart from the code under test.
#pragma once

#include <array>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace snugwalk::test {

using Colour = std::array<int, 3>; ///< red, green, blue, 0 to 255
using Paint = std::function<Colour(int x, int y)>;

struct Picture {
    int width = 0;
    int height = 0;
    std::vector<Colour> pixels;
    [[nodiscard]] Colour at(int x, int y) const
    {
        return pixels.at(static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
                         static_cast<std::size_t>(x));
    }
};

enum class Scans { Baseline, Progressive };
enum class Rows { Plain, Interlaced };

[[nodiscard]] std::string makeJpeg(int width, int height, const Paint &paint, int quality = 90,
                                   Scans scans = Scans::Baseline);
/// \param alpha of every pixel, 255 covers.
[[nodiscard]] std::string makePng(int width, int height, const Paint &paint, int alpha = 255,
                                  Rows rows = Rows::Plain);
/// By libjpeg with its own error handling: a damaged picture ends the test program.
[[nodiscard]] Picture decodedJpeg(std::string_view bytes);

/// The largest difference of a channel.
[[nodiscard]] int difference(Colour a, Colour b);

/// The same on every machine; hard to compress.
[[nodiscard]] Colour noise(int x, int y);
[[nodiscard]] inline Paint plain(Colour colour)
{
    return [=](int, int) { return colour; };
}

/// A folder of its own for one test, gone with it.
class ScratchFolder {
public:
    ScratchFolder();
    ScratchFolder(const ScratchFolder &) = delete;
    ScratchFolder &operator=(const ScratchFolder &) = delete;
    ~ScratchFolder();
    [[nodiscard]] const std::filesystem::path &path() const { return m_path; }
    /// Every file and folder below, relative, sorted.
    [[nodiscard]] std::vector<std::string> content() const;

private:
    std::filesystem::path m_path;
};

} // namespace snugwalk::test
