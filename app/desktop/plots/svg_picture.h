// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QPaintDevice>
#include <QSize>

#include <memory>

namespace bothways::app {

/// A paint device that writes SVG 1.1: paths, text as text, pictures, and clipping.
///
/// In place of QSvgGenerator, which (Qt 6.4) writes SVG Tiny and so leaves clipping out: a zoomed
/// plot would run over its axes. Clips are taken as rectangles, which is all that plots use; solid
/// pens and brushes only. Same painting, same bytes.
class SvgPicture final : public QPaintDevice {
public:
    /// @param size   in CSS pixels
    /// @param title  for people who cannot see the picture
    SvgPicture(QSize size, const QString& title, const QString& description);
    ~SvgPicture() override;

    [[nodiscard]] QPaintEngine* paintEngine() const override;
    /// The document; complete once painting has ended.
    [[nodiscard]] QByteArray document() const;

protected:
    int metric(PaintDeviceMetric metric) const override;

private:
    class Engine;
    QSize m_size;
    QString m_title, m_description;
    std::unique_ptr<Engine> m_engine;
};

} // namespace bothways::app
