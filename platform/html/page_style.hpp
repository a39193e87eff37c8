// SPDX-License-Identifier: Apache-2.0
// How a report's page looks, on a screen and on paper, and what happens when it is pressed.
#pragma once

namespace snugwalk::html {

/// Ink on white; the quietest words have a contrast of 6.9:1 (#565B60).
inline constexpr const char *pageStyle = R"(
html{color-scheme:light}
body{font:17px/1.5 'Atkinson Hyperlegible Next',system-ui,sans-serif;color:#1B1F23;background:#fff;max-width:56rem;margin:2rem auto;padding:0 1rem;overflow-wrap:break-word}
h1{font-size:1.8rem;line-height:1.2;margin:0}
h2{font-size:1.25rem;margin:2rem 0 .5rem;border-top:2px solid #1B1F23;padding-top:.5rem}
h3{font-size:1.05rem;margin:1rem 0 .25rem}
p{margin:.35rem 0}
.quiet,figcaption{color:#565B60}
figcaption{font-size:.9rem}
.state{font-size:1.15rem;margin:1rem 0}
.table{overflow-x:auto}
table{border-collapse:collapse;width:100%}
th,td{text-align:start;vertical-align:top;padding:.35rem .6rem .35rem 0;border-bottom:1px solid #C8CCD0}
th{border-bottom:2px solid #1B1F23}
.number{text-align:end;font-variant-numeric:tabular-nums;white-space:nowrap}
.finding h3{display:flex;gap:.5rem;align-items:flex-start}
.finding h3 svg{flex:none;margin-top:.15rem}
.finding .no{min-width:1.6rem;height:1.6rem;line-height:1.6rem;border:1.5px solid #1B1F23;border-radius:1rem;text-align:center;flex:none}
.finding p{margin:.15rem 0 .15rem 2.1rem}
figure{margin:.5rem 0}
svg{max-width:100%;height:auto;display:block;font-family:inherit}
.drawing svg,.map svg{width:100%}
.photos{display:flex;flex-wrap:wrap;gap:1rem}
.photos figure{flex:0 1 22rem;min-width:min(14rem,100%)}
.photo{position:relative;display:block}
.photo img{width:100%;height:auto;display:block;aspect-ratio:var(--w)/var(--h)}
.photo svg{position:absolute;inset:0;width:100%;height:100%}
.away{border:1.5px dashed #565B60;padding:2rem 1rem;text-align:center}
.two{display:grid;grid-template-columns:1fr 1fr;gap:1rem}
button{font:inherit;color:inherit;background:#fff;border:2px solid #1B1F23;border-radius:6px;min-height:48px;padding:0 1rem;cursor:pointer}
:focus-visible{outline:3px solid #1B1F23;outline-offset:3px}
.caution{border:2px solid #E69F00;background:#FFF8D2;padding:.6rem 1rem;margin:1rem 0}
.caution h3{margin:0}
.ticks{list-style:none;padding:0}
.ticks li{display:flex;gap:.6rem;margin:.4rem 0}
.box{flex:none;width:1.1rem;height:1.1rem;border:1.5px solid #1B1F23;margin-top:.2rem}
.row{display:block;height:2.2rem;border-bottom:1px solid #1B1F23}
.blank,.sign{margin:1rem 0}
.sign .line{display:inline-block;width:47%;margin-inline-end:2%}
.sign .line p{font-size:.9rem;color:#565B60}
.sign .line{vertical-align:bottom}
.sign .line svg{display:block;width:100%;border-bottom:1px solid #1B1F23}
.break{border:0;margin:0}
footer{margin:3rem 0 1rem;border-top:1px solid #C8CCD0;padding-top:.5rem;color:#565B60;font-size:.9rem}
@media screen{
.live .photos .photo{cursor:zoom-in}
.live .pair.both .two{grid-template-columns:1fr}
.live .pair.both .two>figure{grid-area:1/1}
.live .pair.both .then,.live .pair.both.past .now{visibility:hidden}
.live .pair.both.past .then{visibility:visible}
.live .photo.large{position:fixed;inset:0;z-index:1;background:#fff;display:grid;place-content:center;cursor:zoom-out}
.live .photo.large img,.live .photo.large svg{grid-area:1/1;position:static;width:min(100vw,calc(100vh*var(--w)/var(--h)));height:auto}
}
@media print{
body{margin:0;padding:0;max-width:none;font-size:10.5pt}
button{display:none}
h1,h2,h3{break-after:avoid}
tr,figure,.finding h3,.caution,.sign,.blank,.ticks li{break-inside:avoid}
.caution{break-before:avoid}
.finding{break-inside:avoid-page}
.photos figure{flex-basis:45%}
.break{break-after:page}
.caution,.map svg,.drawing svg{print-color-adjust:exact;-webkit-print-color-adjust:exact}
.boxes footer{display:none}
}
)";

/// A pair shows then or now, a photo opens and closes; by hand and by keyboard. `boxes`: the browser prints
/// the foot of each page itself.
inline constexpr const char *pageScript = R"(
(function(){'use strict';
var root=document.documentElement;root.classList.add('live');
if('CSSMarginRule' in window)root.classList.add('boxes');
document.querySelectorAll('.pair.both').forEach(function(pair){
var button=pair.querySelector('button');
function show(past){pair.classList.toggle('past',past);button.textContent=past?button.dataset.now:button.dataset.then;}
function turn(){show(!pair.classList.contains('past'));}
button.hidden=false;button.addEventListener('click',turn);
pair.querySelector('.two').addEventListener('click',turn);show(false);});
document.querySelectorAll('.photos .photo').forEach(function(photo){
function set(large){photo.classList.toggle('large',large);photo.setAttribute('aria-expanded',String(large));}
photo.tabIndex=0;photo.setAttribute('role','button');photo.setAttribute('aria-label',photo.querySelector('img').alt);set(false);
photo.addEventListener('click',function(){set(!photo.classList.contains('large'));});
photo.addEventListener('keydown',function(event){
if(event.key==='Enter'||event.key===' '){event.preventDefault();set(!photo.classList.contains('large'));}
else if(event.key==='Escape')set(false);});});
})();
)";

} // namespace snugwalk::html
