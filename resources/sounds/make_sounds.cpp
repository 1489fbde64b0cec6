// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later

// make_sounds FOLDER: writes the three sounds of the watch page as WAV files (16 bit, mono).
//
// They are told apart with eyes shut and over the noise of a car: by how often they sound, how
// fast, and how high. Two partials, since a pure tone cannot be found in a room.
#include <cmath>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <numbers>
#include <string>
#include <vector>

namespace {

constexpr int kRate = 22'050;
constexpr double kLoud = 0.8;
constexpr double kFade_s = 0.008; // without it every tone begins and ends with a click

struct Tone {
    double hz, length_s, rest_s;
};

struct Sound {
    const char* name;
    std::vector<Tone> tones;
};

const std::vector<Sound>& sounds()
{
    static const std::vector<Sound> all{{"note", {{523.25, 0.30, 0.05}}},
                                        {"warning", {{880.0, 0.16, 0.12}, {880.0, 0.16, 0.05}}},
                                        {"spoiled",
                                         {{1396.9, 0.09, 0.05},
                                          {1046.5, 0.09, 0.05},
                                          {1396.9, 0.09, 0.05},
                                          {1046.5, 0.09, 0.05},
                                          {1396.9, 0.22, 0.05}}}};
    return all;
}

void add(std::vector<std::int16_t>& samples, const Tone& tone)
{
    const auto count = static_cast<int>(tone.length_s * kRate);
    for (int i = 0; i < count; ++i) {
        const double at_s = static_cast<double>(i) / kRate;
        const double edge = std::min(1.0, std::min(at_s, tone.length_s - at_s) / kFade_s);
        const double turn = 2.0 * std::numbers::pi * tone.hz * at_s;
        const double wave = (std::sin(turn) + 0.35 * std::sin(2.0 * turn)) / 1.35;
        samples.push_back(static_cast<std::int16_t>(32'767.0 * kLoud * edge * wave));
    }
    samples.resize(samples.size() + static_cast<std::size_t>(tone.rest_s * kRate), 0);
}

void put(std::string& bytes, std::uint32_t value, int count)
{
    for (int i = 0; i < count; ++i) // little-endian, whatever the machine
        bytes.push_back(static_cast<char>((value >> (8 * i)) & 0xFFU));
}

std::string wav(const std::vector<std::int16_t>& samples)
{
    const auto size = static_cast<std::uint32_t>(2 * samples.size());
    std::string bytes = "RIFF";
    put(bytes, 36 + size, 4);
    bytes += "WAVEfmt ";
    put(bytes, 16, 4);
    put(bytes, 1, 2); // PCM
    put(bytes, 1, 2); // mono
    put(bytes, kRate, 4);
    put(bytes, 2 * kRate, 4);
    put(bytes, 2, 2);
    put(bytes, 16, 2);
    bytes += "data";
    put(bytes, size, 4);
    for (const std::int16_t sample : samples)
        put(bytes, static_cast<std::uint16_t>(sample), 2);
    return bytes;
}

} // namespace

int main(int argc, char** argv)
{
    if (argc != 2) {
        std::cerr << "usage: make_sounds FOLDER\n";
        return 2;
    }
    std::filesystem::create_directories(argv[1]);
    for (const Sound& sound : sounds()) {
        std::vector<std::int16_t> samples;
        for (const Tone& tone : sound.tones)
            add(samples, tone);
        const auto path = std::filesystem::path(argv[1]) / (std::string(sound.name) + ".wav");
        std::ofstream file(path, std::ios::binary);
        file << wav(samples);
        if (!file.flush()) {
            std::cerr << "make_sounds: " << path.string() << " cannot be written\n";
            return 1;
        }
    }
    return 0;
}
