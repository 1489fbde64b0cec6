// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/record/line_input.h"

#include <array>
#include <poll.h>
#include <thread>
#include <unistd.h>

namespace bothways::cli {
namespace {

constexpr std::size_t kLongestLine = 4096;

} // namespace

std::vector<std::string> LineInput::wait(std::chrono::milliseconds patience)
{
    std::vector<std::string> lines;
    if (m_ended) {
        std::this_thread::sleep_for(patience);
        return lines;
    }
    pollfd asked{m_descriptor, POLLIN, 0};
    if (poll(&asked, 1, static_cast<int>(patience.count())) <= 0)
        return lines;
    std::array<char, 4096> bytes{};
    const ssize_t count = read(m_descriptor, bytes.data(), bytes.size());
    if (count <= 0) {
        m_ended = true;
        if (!m_rest.empty())
            lines.push_back(std::move(m_rest));
        m_rest.clear();
        return lines;
    }
    for (ssize_t i = 0; i < count; ++i) {
        const char c = bytes[static_cast<std::size_t>(i)];
        if (c == '\n') {
            lines.push_back(std::move(m_rest));
            m_rest.clear();
        } else if (m_rest.size() < kLongestLine) {
            m_rest += c;
        }
    }
    return lines;
}

} // namespace bothways::cli
