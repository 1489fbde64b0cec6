// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/svg_picture.h"

#include <QBuffer>
#include <QFontInfo>
#include <QImage>
#include <QPaintEngine>
#include <QPainter>
#include <QPainterPath>
#include <QPixmap>

namespace bothways::app {
namespace {

/// To a hundredth of a pixel, without a locale.
QString number(double value)
{
    QString text = QString::number(value, 'f', 2);
    while (text.endsWith(u'0'))
        text.chop(1);
    if (text.endsWith(u'.'))
        text.chop(1);
    return text == QLatin1String("-0") ? QStringLiteral("0") : text;
}

QString pathData(const QPainterPath& path)
{
    QString data;
    for (int i = 0; i < path.elementCount(); ++i) {
        const QPainterPath::Element element = path.elementAt(i);
        switch (element.type) {
        case QPainterPath::MoveToElement: data += u'M'; break;
        case QPainterPath::LineToElement: data += u'L'; break;
        case QPainterPath::CurveToElement: data += u'C'; break;
        case QPainterPath::CurveToDataElement: data += u' '; break;
        }
        data += number(element.x) + u' ' + number(element.y);
    }
    return data;
}

QString paint(const char* what, const QColor& colour)
{
    QString text = QStringLiteral(" %1=\"%2\"").arg(QLatin1String(what), colour.name());
    if (colour.alpha() < 255)
        text +=
            QStringLiteral(" %1-opacity=\"%2\"").arg(QLatin1String(what), number(colour.alphaF()));
    return text;
}

QString strokeAttributes(const QPen& pen)
{
    if (pen.style() == Qt::NoPen || pen.color().alpha() == 0)
        return QStringLiteral(" stroke=\"none\"");
    const double width = pen.widthF() > 0.0 ? pen.widthF() : 1.0;
    QString text =
        paint("stroke", pen.color()) + QStringLiteral(" stroke-width=\"%1\"").arg(number(width));
    if (pen.capStyle() != Qt::FlatCap)
        text += pen.capStyle() == Qt::RoundCap ? QLatin1String(" stroke-linecap=\"round\"")
                                               : QLatin1String(" stroke-linecap=\"square\"");
    if (pen.joinStyle() == Qt::RoundJoin)
        text += QLatin1String(" stroke-linejoin=\"round\"");
    QStringList dashes;
    for (const double dash : pen.dashPattern())
        dashes << number(dash * width);
    if (!dashes.isEmpty())
        text += QStringLiteral(" stroke-dasharray=\"%1\"").arg(dashes.join(u' '));
    return text;
}

QString fillAttributes(const QBrush& brush)
{
    if (brush.style() == Qt::NoBrush || brush.color().alpha() == 0)
        return QStringLiteral(" fill=\"none\"");
    return paint("fill", brush.color());
}

} // namespace

class SvgPicture::Engine final : public QPaintEngine {
public:
    explicit Engine(QRectF all)
        : QPaintEngine(QPaintEngine::PrimitiveTransform | QPaintEngine::PixmapTransform |
                       QPaintEngine::AlphaBlend | QPaintEngine::PainterPaths |
                       QPaintEngine::Antialiasing | QPaintEngine::ConstantOpacity |
                       QPaintEngine::PaintOutsidePaintEvent),
          m_all(all)
    {
    }

    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    void updateState(const QPaintEngineState&) override {} // read from the painter when it draws
    Type type() const override { return QPaintEngine::User; }

    void drawPath(const QPainterPath& path) override
    {
        write(QStringLiteral("<path d=\"%1\"%2%3")
                  .arg(pathData(path), fillAttributes(painter()->brush()),
                       strokeAttributes(painter()->pen())));
    }

    void drawPolygon(const QPointF* points, int count, PolygonDrawMode mode) override
    {
        QPainterPath path;
        for (int i = 0; i < count; ++i)
            i == 0 ? path.moveTo(points[i]) : path.lineTo(points[i]);
        if (mode != PolylineMode)
            path.closeSubpath();
        const QBrush brush = mode == PolylineMode ? QBrush(Qt::NoBrush) : painter()->brush();
        write(QStringLiteral("<path d=\"%1\"%2%3")
                  .arg(pathData(path), fillAttributes(brush), strokeAttributes(painter()->pen())));
    }
    using QPaintEngine::drawPolygon;

    void drawTextItem(const QPointF& at, const QTextItem& item) override
    {
        if (item.text().trimmed().isEmpty())
            return;
        const QFont font = item.font();
        QString attributes =
            QStringLiteral(" x=\"%1\" y=\"%2\" font-family=\"'%3', sans-serif\" font-size=\"%4\""
                           " textLength=\"%5\" lengthAdjust=\"spacingAndGlyphs\"")
                .arg(number(at.x()), number(at.y()), font.family().toHtmlEscaped(),
                     number(QFontInfo(font).pixelSize()), number(item.width()));
        if (font.bold())
            attributes += QLatin1String(" font-weight=\"bold\"");
        if (font.italic())
            attributes += QLatin1String(" font-style=\"italic\"");
        write(QStringLiteral("<text%1%2").arg(attributes, paint("fill", painter()->pen().color())),
              item.text().toHtmlEscaped() + QLatin1String("</text>"));
    }

    void drawPixmap(const QRectF& target, const QPixmap& pixmap, const QRectF& source) override
    {
        drawImage(target, pixmap.toImage(), source, Qt::AutoColor);
    }

    void drawImage(const QRectF& target, const QImage& image, const QRectF& source,
                   Qt::ImageConversionFlags) override
    {
        QByteArray png;
        QBuffer buffer(&png);
        image.copy(source.toRect()).save(&buffer, "PNG");
        write(QStringLiteral("<image x=\"%1\" y=\"%2\" width=\"%3\" height=\"%4\""
                             " preserveAspectRatio=\"none\""
                             " xlink:href=\"data:image/png;base64,%5\"")
                  .arg(number(target.x()), number(target.y()), number(target.width()),
                       number(target.height()), QString::fromLatin1(png.toBase64())));
    }

    const QString& body() const { return m_body; }
    const QString& clips() const { return m_clips; }

private:
    void write(const QString& element, const QString& inside = {})
    {
        const QTransform transform = painter()->combinedTransform();
        QString line = element;
        if (painter()->opacity() < 1.0)
            line += QStringLiteral(" opacity=\"%1\"").arg(number(painter()->opacity()));
        if (!transform.isIdentity())
            line += QStringLiteral(" transform=\"matrix(%1 %2 %3 %4 %5 %6)\"")
                        .arg(QString::number(transform.m11(), 'g', 6),
                             QString::number(transform.m12(), 'g', 6),
                             QString::number(transform.m21(), 'g', 6),
                             QString::number(transform.m22(), 'g', 6), number(transform.dx()),
                             number(transform.dy()));
        line += inside.isEmpty() ? QString(QLatin1String("/>\n")) : u'>' + inside + u'\n';
        const QString clip = clipName(transform);
        m_body +=
            clip.isEmpty()
                ? line
                : QStringLiteral("<g clip-path=\"url(#%1)\">%2</g>\n").arg(clip, line.chopped(1));
    }

    QString clipName(const QTransform& transform)
    {
        if (!painter()->hasClipping())
            return {};
        const QRectF rect = transform.mapRect(painter()->clipBoundingRect());
        if (rect.contains(m_all))
            return {};
        if (const auto at = m_clipRects.indexOf(rect); at >= 0)
            return QStringLiteral("clip%1").arg(at);
        const QString name = QStringLiteral("clip%1").arg(m_clipRects.size());
        m_clipRects.append(rect);
        m_clips += QStringLiteral("<clipPath id=\"%1\"><rect x=\"%2\" y=\"%3\" width=\"%4\" "
                                  "height=\"%5\"/></clipPath>\n")
                       .arg(name, number(rect.x()), number(rect.y()), number(rect.width()),
                            number(rect.height()));
        return name;
    }

    QRectF m_all;
    QString m_body, m_clips;
    QList<QRectF> m_clipRects;
};

SvgPicture::SvgPicture(QSize size, const QString& title, const QString& description)
    : m_size(size),
      m_title(title),
      m_description(description),
      m_engine(std::make_unique<Engine>(QRectF(QPointF(0, 0), QSizeF(size))))
{
}

SvgPicture::~SvgPicture() = default;

QPaintEngine* SvgPicture::paintEngine() const
{
    return m_engine.get();
}

QByteArray SvgPicture::document() const
{
    return QStringLiteral(
               "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
               "<svg xmlns=\"http://www.w3.org/2000/svg\" "
               "xmlns:xlink=\"http://www.w3.org/1999/xlink\" version=\"1.1\" role=\"img\" "
               "width=\"%1\" height=\"%2\" viewBox=\"0 0 %1 %2\">\n<title>%3</title>\n"
               "<desc>%4</desc>\n<defs>\n%5</defs>\n")
               .arg(QString::number(m_size.width()), QString::number(m_size.height()),
                    m_title.toHtmlEscaped(), m_description.toHtmlEscaped(), m_engine->clips())
               .toUtf8() +
           m_engine->body().toUtf8() + "</svg>\n";
}

int SvgPicture::metric(PaintDeviceMetric metric) const
{
    constexpr int kDpi = 96;
    constexpr double kMmPerInch = 25.4;
    switch (metric) {
    case PdmWidth: return m_size.width();
    case PdmHeight: return m_size.height();
    case PdmWidthMM: return qRound(m_size.width() * kMmPerInch / kDpi);
    case PdmHeightMM: return qRound(m_size.height() * kMmPerInch / kDpi);
    case PdmNumColors: return 1 << 24;
    case PdmDepth: return 32;
    case PdmDpiX:
    case PdmDpiY:
    case PdmPhysicalDpiX:
    case PdmPhysicalDpiY: return kDpi;
    case PdmDevicePixelRatio: return 1;
    case PdmDevicePixelRatioScaled: return qRound(devicePixelRatioFScale());
    default: return 0;
    }
}

} // namespace bothways::app
