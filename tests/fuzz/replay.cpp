// SPDX-License-Identifier: Apache-2.0
// Runs a fuzz function over its corpus and 20,000 seeded mutations; a broken law or crash fails.
#include <algorithm>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "fuzz.hpp"
#include "mutations.hpp"

namespace {

constexpr unsigned seed = 20240601;
constexpr int mutations = 20'000;

std::string current; // written out when the process ends by a broken law

void keepCase(int)
{
    std::ofstream("fuzz-failed-case.bin", std::ios::binary) << current;
    std::fprintf(stderr, "the input is in fuzz-failed-case.bin, %zu bytes\n", current.size());
    std::signal(SIGABRT, SIG_DFL);
    std::abort();
}

void run(const std::string &input)
{
    current = input;
    // A copy of the exact size, so that the sanitizer sees a read beyond its end.
    const std::vector<std::uint8_t> bytes(input.begin(), input.end());
    LLVMFuzzerTestOneInput(bytes.data(), bytes.size());
}

std::vector<std::string> readCorpus(const char *folder)
{
    std::vector<std::filesystem::path> paths;
    for (const auto &entry : std::filesystem::directory_iterator(folder))
        paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    std::vector<std::string> corpus;
    for (const auto &path : paths) {
        std::ifstream in(path, std::ios::binary);
        corpus.emplace_back(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>());
    }
    return corpus;
}

} // namespace

int main(int argc, char **argv)
{
    if (argc != 2)
        return 2;
    const std::vector<std::string> corpus = readCorpus(argv[1]);
    if (corpus.empty()) {
        std::fprintf(stderr, "no corpus in %s\n", argv[1]);
        return 1;
    }
    std::signal(SIGABRT, keepCase);
    run("");
    for (const std::string &input : corpus)
        run(input);
    std::mt19937 rng(seed);
    for (int i = 0; i < mutations; ++i)
        run(mutate(corpus, rng));
    std::printf("%zu files and %d mutations\n", corpus.size(), mutations);
    return 0;
}
